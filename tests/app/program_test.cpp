#include "app/study_folder.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using namespace glim;
using test::contents;
using test::Ran;
using test::run;
using test::StudyFolder;

namespace fs = std::filesystem;

TEST_CASE("the exit code tells the answer", "[app]")
{
    CHECK(run("cornerglim check clear.toml", test::studies()).exit_code == 0);
    CHECK(run("cornerglim check walled.toml", test::studies()).exit_code == 1);
    CHECK(run("cornerglim check absent.toml", test::studies()).exit_code == 2);
    CHECK(run("cornerglim check position.toml", test::studies()).exit_code == 4);
}

// The plate is 60 x 50 mm; the wall reaches 70 mm forward at 40 mm beside it, so that at H = -45
// half the plate is hidden: 3000 cos 45 cos V / 2. Least at V = 15: 1024.52 mm2.
TEST_CASE("the program's answer is the one on paper", "[app]")
{
    const Ran ran = run("cornerglim check walled.toml --json", test::studies());
    const nlohmann::json check = nlohmann::json::parse(ran.output)["checks"][0];
    CHECK(check["least_visible_mm2"].get<double>() == Approx(1024.519).margin(0.01));
    CHECK(check["worst"]["h_deg"] == -45);
    CHECK(std::abs(check["worst"]["v_deg"].get<double>()) == 15);
    CHECK(check["rows"][0]["lamps"][0]["blockers"][0]["surface"] == "wall");
}

TEST_CASE("without --out nothing is written", "[app]")
{
    const StudyFolder folder;
    const auto before = contents(folder.home.path());
    CHECK(folder.in("cornerglim check walled.toml").exit_code == 1);
    CHECK(folder.in("cornerglim inspect plate.obj").exit_code == 0);
    CHECK(folder.in("cornerglim tables own-example").exit_code == 0);
    CHECK(contents(folder.home.path()) == before);
}

TEST_CASE("result folders are equal to the byte for any number of threads", "[app]")
{
    const StudyFolder folder;
    CHECK(folder.in("cornerglim check walled.toml --out one --threads 1").exit_code == 1);
    CHECK(folder.in("cornerglim check walled.toml --out four --threads 4").exit_code == 1);
    const auto one = contents(folder.home / "one");
    CHECK(one.size() == 6 + 2 * 3); // two checks have something in the way
    CHECK(one == contents(folder.home / "four"));
}

TEST_CASE("results do not depend on the folder the program is started in", "[app]")
{
    const StudyFolder folder;
    folder.in("cornerglim check walled.toml --out here");
    folder.in("mkdir below && cd below && cornerglim check ../walled.toml --out ../there");
    CHECK(contents(folder.home / "here") == contents(folder.home / "there"));
}

TEST_CASE("with --json the program prints one document, the one of the result folder, and words go "
          "elsewhere",
          "[app]")
{
    const StudyFolder folder;
    const Ran ran = folder.in("cornerglim check walled.toml --json --out results");
    CHECK(nlohmann::json::accept(ran.output));
    CHECK(ran.output == test::read(folder.home / "results/result.json"));
    CHECK(ran.errors.find("Warning: walled.toml") != std::string::npos);
    for (const char* line : {"cornerglim inspect plate.obj --json", "cornerglim tables --json",
                             "cornerglim tables fmvss-108 --json"})
        CHECK(nlohmann::json::accept(folder.in(line).output));
}

TEST_CASE("the results are replaced by the next run and by nobody else's files", "[app]")
{
    const StudyFolder folder;
    CHECK(folder.in("cornerglim check walled.toml --out results").exit_code == 1);
    CHECK(folder.in("cornerglim check clear.toml --out results").exit_code == 0);
    CHECK(test::read(folder.home / "results/result.json").find("clear.toml") != std::string::npos);
}

TEST_CASE("a folder with somebody else's file is refused and left as it is", "[app]")
{
    const StudyFolder folder;
    test::write(folder.home / "mine/letter.txt", "dear reader");
    const Ran ran = folder.in("cornerglim check clear.toml --out mine");
    CHECK(ran.exit_code == 2);
    CHECK(ran.output.empty());
    CHECK(ran.errors.find("letter.txt") != std::string::npos);
    CHECK(ran.errors.find("\n1 complaint; nothing was written\n") != std::string::npos);
    CHECK(contents(folder.home / "mine") ==
          std::map<std::string, std::string>{{"letter.txt", "dear reader"}});
}

TEST_CASE("a wrong study is told with place, remedy and count", "[app]")
{
    const StudyFolder folder;
    test::write(folder.home / "wrong.toml", "format = 1\ntitel = \"x\"\n");
    const Ran ran = folder.in("cornerglim check wrong.toml --out results");
    CHECK(ran.exit_code == 2);
    CHECK(ran.errors.find("wrong.toml:2:") != std::string::npos);
    CHECK(ran.errors.find("did you mean `title`?") != std::string::npos);
    CHECK(ran.errors.find(" complaints; nothing was written\n") != std::string::npos);
    CHECK_FALSE(fs::exists(folder.home / "results"));
}

TEST_CASE("a step on the command line takes the place of the study's own", "[app]")
{
    const Ran ran = run("cornerglim check walled.toml --json --step 15", test::studies());
    const nlohmann::json json = nlohmann::json::parse(ran.output);
    CHECK(json["sampling"]["step_deg"] == 15);
    CHECK(json["command"] == "cornerglim check walled.toml --step 15");
    CHECK(json["checks"][0]["rows"][0]["lamps"][0]["directions"]["at"].size() == 3);
}

TEST_CASE("a quiet check says a line a check", "[app]")
{
    const Ran ran = run("cornerglim check walled.toml --quiet", test::studies());
    CHECK(ran.output.find("NOT MET  across the nose\nNOT MET  indicator area\nThis informs") == 0);
}

TEST_CASE("new writes a study and never over another one unless forced", "[app]")
{
    const StudyFolder folder;
    CHECK(folder.in("cornerglim new plate.obj").exit_code == 0);
    const std::string study = test::read(folder.home / "plate.toml");
    CHECK(study.find("select = { object = \"lens\" }") != std::string::npos);

    test::write(folder.home / "plate.toml", "mine");
    CHECK(folder.in("cornerglim new plate.obj").exit_code == 2);
    CHECK(test::read(folder.home / "plate.toml") == "mine");
    CHECK(folder.in("cornerglim new plate.obj --force").exit_code == 0);
    CHECK(test::read(folder.home / "plate.toml") == study);
    CHECK(folder.in("cornerglim new plate.obj --out -").output == study);
}

TEST_CASE("a starter study lies beside its mesh, or finds it from another folder", "[app]")
{
    const StudyFolder folder;
    CHECK(folder.in("mkdir below && cp plate.obj below && cornerglim new below/plate.obj")
              .exit_code == 0);
    CHECK(test::read(folder.home / "below/plate.toml").find("file = \"plate.obj\"") !=
          std::string::npos);
    CHECK(folder.in("cornerglim new plate.obj --out deeper/down/first.toml").exit_code == 0);
    CHECK(test::read(folder.home / "deeper/down/first.toml").find("file = \"../../plate.obj\"") !=
          std::string::npos);
}

// Each complaint stands at a line that says FILL IN, and no such line but the optional ones is
// passed over.
TEST_CASE("reading a starter study complains of the lines that it announces and no other", "[app]")
{
    const StudyFolder folder;
    folder.in("cornerglim new plate.obj");
    const Ran ran = folder.in("cornerglim check plate.toml");
    CHECK(ran.exit_code == 2);
    std::vector<std::string> lines{""};
    std::istringstream study(test::read(folder.home / "plate.toml"));
    for (std::string line; std::getline(study, line);)
        lines.push_back(line);
    std::istringstream errors(ran.errors);
    int complaints = 0;
    for (std::string line; std::getline(errors, line);) {
        if (line.rfind("plate.toml:", 0) != 0)
            continue;
        ++complaints;
        INFO(line);
        CHECK(lines.at(std::stoul(line.substr(11))).find("FILL IN") != std::string::npos);
    }
    CHECK(complaints >= 8);
}

TEST_CASE("a starter study that is filled in can be checked", "[app]")
{
    const StudyFolder folder;
    const Ran ran = folder.in(R"(cornerglim new plate.obj --out - |
        sed -e 's/^forward = ""/forward = "-x"/' -e 's/^up = ""/up = "+z"/' \
            -e 's/^modelled_side = ""/modelled_side = "left"/' \
            -e 's/^.ground.FILL-IN./[ground.curb]/' -e 's/^height = ""/height = 0/' \
            -e 's/^unit = ""/unit = "mm"/' -e 's/^role = ""/role = "emitting"/' \
            -e 's/^mirror = ""/mirror = "yes"/' -e 's/^function = ""/function = "front_indicator"/' \
            -e 's/^side = ""/side = "left"/' -e 's/^emits = \[""\]/emits = ["lens"]/' >filled.toml
        cornerglim check filled.toml)");
    CHECK(ran.exit_code == 0);
    CHECK(ran.output.find("MET  across the nose") != std::string::npos);
}

// At a step of 0.1 degrees the demo would take minutes.
TEST_CASE("a check that is interrupted ends with 130 and leaves nothing behind", "[app]")
{
    const test::TemporaryFolder home;
    const Ran ran = run("timeout --preserve-status -s INT 1 cornerglim check "
                        "meshes/demo/theme-c.toml --step 0.1 --out '" +
                            (home / "results").string() + "'",
                        GLIM_SOURCE_DIR);
    CHECK(ran.exit_code == 130);
    CHECK(ran.output.empty());
    CHECK(ran.errors == "stopped; nothing was written\n");
    CHECK(home.entries() == 0);
}

TEST_CASE("output that cannot be written is the machine's fault and named", "[app]")
{
    const Ran full = run("cornerglim --help >/dev/full", test::studies());
    CHECK(full.exit_code == 3);
    CHECK(full.errors == "cornerglim: standard output: No space left on device\n");

    const Ran closed = run("cornerglim --help >&-", test::studies());
    CHECK(closed.exit_code == 3);
    CHECK(closed.errors.find("standard output") != std::string::npos);
}

TEST_CASE("a reader that goes away early is told, not died of", "[app]")
{
    // The reader ends at once; the writer starts later, writes into nothing, and says how it ended.
    const Ran ran =
        run("{ sleep 0.3; cornerglim tables --json; echo $? >&2; } | true", test::studies());
    CHECK(ran.errors == "cornerglim: standard output: Broken pipe\n3\n");
}

TEST_CASE("the caution stands wherever an outcome or a table is shown", "[app]")
{
    for (const char* line : {"cornerglim check clear.toml", "cornerglim check clear.toml --quiet",
                             "cornerglim check clear.toml --json", "cornerglim tables",
                             "cornerglim tables fmvss-108"}) {
        INFO(line);
        CHECK(run(line, test::studies()).output.find("it does not certify") != std::string::npos);
    }
}

// Two lenses of 60 x 50 mm; the row asks 5000 mm2 on the axis of both together.
TEST_CASE("lamps that answer together are shown together", "[app]")
{
    const Ran ran = run("cornerglim check rear.toml", test::studies());
    CHECK(ran.exit_code == 0);
    CHECK(ran.output.find("rear-together-narrow: 5000 mm2 needed together\n") != std::string::npos);
    CHECK(ran.output.find("upper + lower  met      6000 mm2  H 0, V 0\n") != std::string::npos);
}

TEST_CASE("a file name that would steer a terminal is told harmlessly", "[app]")
{
    const StudyFolder folder;
    const Ran ran = folder.in("cornerglim new plate.obj --out \"$(printf 'a\\033b').toml\"");
    CHECK(ran.exit_code == 0);
    CHECK(ran.errors.find("Written: a") != std::string::npos);
    CHECK(ran.errors.find('\x1b') == std::string::npos);
    const Ran report =
        folder.in("cornerglim report clear.toml --step 15 --out \"$(printf 'a\\033b')\"");
    CHECK(report.errors.find("report.html") != std::string::npos);
    CHECK(report.errors.find('\x1b') == std::string::npos);
}
