#include "app/run.h"
#include "machine/temporary_folder.h"

#include <nlohmann/json.hpp>

#include <catch2/catch.hpp>

#include <fstream>

using namespace glim;
using namespace glim::test;

namespace {

const std::string theme = GLIM_SOURCE_DIR "/meshes/demo/theme-a.toml";

} // namespace

TEST_CASE("theme A's indicator is moved, and check confirms the study that comes out", "[app]")
{
    const TemporaryFolder folder;
    const Ran found = run("cornerglim move-lamp '" + theme + "' --step 15 --quiet --out out",
                          folder.path().string());
    INFO(found.output << found.errors);
    CHECK(found.exit_code == 0);
    const Ran checked =
        run("cornerglim check out/study.toml --step 15 --quiet", folder.path().string());
    INFO(checked.output << checked.errors);
    CHECK(checked.exit_code == 0);
    for (const char* file : {"map.png", "map.svg", "map.csv", "summary.txt", "lamp-bezel.obj"})
        CHECK(std::filesystem::exists(folder / "out" / file));
    std::ifstream stream(folder / "out/move-lamp.json");
    const nlohmann::json answer = nlohmann::json::parse(stream);
    CHECK(answer["moves"].size() == 6);
    // The nose stands before the lamp and inboard of it: forward and outboard clear it.
    const auto ways = answer["one_way_alone"];
    CHECK(ways[0]["least"].is_number());
    CHECK(ways[1]["least"].is_null());
    for (const auto& way : ways)
        if (way["least"].is_number())
            CHECK(answer["least_found"]["lit_face_moves_mm"].get<double>() <=
                  way["lit_face_moves_mm"].get<double>() * 1.04);
}

TEST_CASE("a study that lets no lamp move is refused, and nothing is written", "[app]")
{
    const TemporaryFolder folder;
    const Ran ran = run("cornerglim move-lamp '" + studies() + "/walled.toml' --out out",
                        folder.path().string());
    CHECK(ran.exit_code == 2);
    CHECK(ran.errors.find("[move_lamp]") != std::string::npos);
    CHECK_FALSE(std::filesystem::exists(folder / "out"));
}
