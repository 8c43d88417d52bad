#include "app/study_folder.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using namespace glim;
using test::contents;
using test::Ran;
using test::StudyFolder;

TEST_CASE("options are judged as check judges them, each by its own study", "[app]")
{
    const StudyFolder folder;
    const Ran ran = folder.in("cornerglim compare options.toml --json");
    REQUIRE(ran.exit_code == 0);
    const nlohmann::json all = nlohmann::json::parse(ran.output);
    REQUIRE(all["options"].size() == 2);
    CHECK(all["options"][0]["checks"][0]["outcome"] == "not_met");
    CHECK(all["options"][0]["checks"][0]["margin_mm2"].get<double>() ==
          Approx(1024.519 - 1250).margin(0.01));
    CHECK(all["options"][1]["checks"][0]["outcome"] == "met");
    CHECK(all["options"][1]["checks"].size() == 1); // it asks nothing more
    CHECK(all["options"][1]["surfaces_gone"] == nlohmann::json{"wall"});
}

// By hand: 62,000 + 21.5 n = 190,000 + 12 n, where the harness of the second is not known.
TEST_CASE("a comparison prints its arithmetic, and names what it leaves out", "[app]")
{
    const Ran ran = StudyFolder().in("cornerglim compare options.toml");
    CHECK(ran.exit_code == 0);
    for (const char* said :
         {"parts 14 + harness 5.5 + fitting 2 = 21.5 EUR", "engineering hours 400 x 100",
          "harness: not known",
          "\u201cwalled\u201d costs less than \u201cno wall\u201d below 13,474 vehicles",
          "The lighting regulation in force"}) {
        INFO(ran.output);
        CHECK(ran.output.find(said) != std::string::npos);
    }
}

TEST_CASE("a comparison's folder is the same to the byte for any number of threads", "[app]")
{
    const StudyFolder folder;
    CHECK(folder.in("cornerglim compare options.toml --out one --threads 1").exit_code == 0);
    CHECK(folder.in("cornerglim compare options.toml --out two --threads 3").exit_code == 0);
    const auto one = contents(folder.home / "one");
    CHECK(one.size() == 5 + 1);
    CHECK(one.contains("comparison.html"));
    CHECK(one == contents(folder.home / "two"));
}

TEST_CASE("a folder of results counts by the study in it", "[app]")
{
    const StudyFolder folder;
    CHECK(
        folder
            .in("mkdir eased\n"
                "printf 'format = 1\\nbase = \"../walled.toml\"\\n[[surface]]\\nname = \"wall\"\\n"
                "reshaped = \"wall.obj\"\\n' > eased/study.toml\n"
                "sed 's/^o .*/o eased/' wall.obj > eased/wall.obj\n"
                "sed -i 's/clear.toml/eased/' options.toml\n"
                "cornerglim compare options.toml --json > out.json")
            .exit_code == 0);
    const nlohmann::json all = nlohmann::json::parse(test::read(folder.home / "out.json"));
    CHECK(all["options"][1]["study"] == "eased/study.toml");
    CHECK(all["options"][1]["checks"] == all["options"][0]["checks"]); // the same wall
    CHECK(all["options"][1]["surfaces_moved"].empty());
}

TEST_CASE("options that are not there are all told, and nothing is written", "[app]")
{
    const StudyFolder folder;
    const auto before = contents(folder.home.path());
    const Ran ran = folder.in("sed 's/\"walled.toml\"$/\"away.toml\"/; s/clear.toml/gone/; "
                              "s/base = .*/base = \"walled.toml\"/' options.toml > lost.toml\n"
                              "cornerglim compare lost.toml --out results; code=$?\n"
                              "rm lost.toml; exit $code");
    CHECK(ran.exit_code == 2);
    CHECK(ran.errors.find("lost.toml:15:9: there is no study") != std::string::npos);
    CHECK(ran.errors.find("lost.toml:21:9: there is no study") != std::string::npos);
    CHECK(contents(folder.home.path()) == before);
}

TEST_CASE("a study without options has nothing to compare", "[app]")
{
    const Ran ran = StudyFolder().in("cornerglim compare walled.toml");
    CHECK(ran.exit_code == 2);
    CHECK(ran.errors.find("the study names no option to compare") != std::string::npos);
}
