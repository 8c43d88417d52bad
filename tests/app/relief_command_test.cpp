#include "app/study_folder.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using namespace glim;
using test::contents;
using test::Ran;
using test::StudyFolder;

namespace {

/// The wall beside the plate may be pushed away from it.
constexpr const char* may_be_pushed =
    "printf 'format = 1\\nbase = \"walled.toml\"\\n[[surface]]\\nname = \"wall\"\\nreshapeable = "
    "true\\n"
    "[relief]\\nsteepest = 60\\nblend = 2\\n' > pushed.toml\n";

} // namespace

TEST_CASE("a relief that is found is met by a check of the study that it leaves", "[app]")
{
    const StudyFolder folder;
    const Ran ran =
        folder.in(std::string(may_be_pushed) + "cornerglim relief pushed.toml --out out");
    INFO(ran.output << ran.errors);
    REQUIRE(ran.exit_code == 0);
    CHECK(ran.output.starts_with("Found: a relief of `wall`"));
    CHECK(folder.in("cornerglim check out/study.toml").exit_code == 0);
    const nlohmann::json relief =
        nlohmann::json::parse(test::read(folder.home / "out/relief.json"));
    CHECK(relief["found"] == true);
    CHECK(relief["relief"]["deepest_mm"].get<double>() >=
          relief["least"]["depth_mm"].get<double>());
    for (const char* file : {"wall.obj", "wall-depth.ply", "wall-cutter.stl", "wall-depth.svg",
                             "wall-section-x.svg", "wall-section-z.svg", "wall-sections.csv"})
        CHECK(std::filesystem::exists(folder.home / "out" / file));
}

TEST_CASE("a relief's folder is the same to the byte for any number of threads", "[app]")
{
    const StudyFolder folder;
    CHECK(folder
              .in(std::string(may_be_pushed) +
                  "cornerglim relief pushed.toml --out one --threads 1 &&"
                  "cornerglim relief pushed.toml --out two --threads 3")
              .exit_code == 0);
    CHECK(contents(folder.home / "one") == contents(folder.home / "two"));
}

TEST_CASE("where no surface may be reshaped, relief says so and writes nothing", "[app]")
{
    const StudyFolder folder;
    const auto before = contents(folder.home.path());
    const Ran ran = folder.in("cornerglim relief walled.toml --out out");
    CHECK(ran.exit_code == 2);
    CHECK(ran.errors.find("reshapeable") != std::string::npos);
    CHECK(contents(folder.home.path()) == before);
}

TEST_CASE("a push along the surface is complained of where it stands", "[app]")
{
    const StudyFolder folder;
    const Ran ran = folder.in(std::string(may_be_pushed) +
                              "sed 's/^reshapeable = true/reshapeable = true\\npush = [1, 0, 0]/' "
                              "pushed.toml > along.toml\ncornerglim relief along.toml");
    CHECK(ran.exit_code == 2);
    CHECK(ran.errors.find("along.toml:6:8: `push` of surface `wall` is parallel") !=
          std::string::npos);
}
