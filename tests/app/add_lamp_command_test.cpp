#include "app/run.h"
#include "input/read_study.h"
#include "machine/temporary_folder.h"

#include <nlohmann/json.hpp>

#include <catch2/catch.hpp>

#include <fstream>

using namespace glim;
using namespace glim::test;

namespace {

std::string theme(const std::string& letter)
{
    return GLIM_SOURCE_DIR "/meshes/demo/theme-" + letter + ".toml";
}

nlohmann::json json_in(const std::filesystem::path& file)
{
    std::ifstream stream(file);
    return nlohmann::json::parse(stream);
}

Area lens_of(const std::string& letter, const std::string& surface)
{
    const Study study = read_study(theme(letter));
    for (const Surface& s : study.surfaces)
        if (s.name == surface)
            return area_of(s.mesh);
    throw std::runtime_error("no surface " + surface);
}

/// Adds a lamp to a theme, lets `check` confirm the study that comes out, and gives its lens.
Area confirmed_lens(const std::string& letter)
{
    const TemporaryFolder folder;
    const Ran found = run("cornerglim add-lamp '" + theme(letter) + "' --step 15 --quiet --out out",
                          folder.path().string());
    INFO(found.output << found.errors);
    CHECK(found.exit_code == 0);
    const Ran checked =
        run("cornerglim check out/study.toml --step 15 --quiet", folder.path().string());
    INFO(checked.output << checked.errors);
    CHECK(checked.exit_code == 0);
    for (const char* file : {"places.csv", "suitability.png", "suitability.ply", "summary.txt"})
        CHECK(std::filesystem::exists(folder / "out" / file));
    const nlohmann::json answer = json_in(folder / "out/add-lamp.json");
    REQUIRE_FALSE(answer["alone"].empty());
    return square_millimetres(answer["alone"][0]["lens_mm2"].get<double>());
}

} // namespace

TEST_CASE("theme A gets a lamp that check confirms, no larger than that of theme C", "[app]")
{
    CHECK(confirmed_lens("a") <= lens_of("c", "added lens"));
}

TEST_CASE("theme D gets a lamp that check confirms, no larger than that of theme E", "[app]")
{
    CHECK(confirmed_lens("d") <= lens_of("e", "side lens"));
}

TEST_CASE("a theme whose checks are met needs no further lamp", "[app]")
{
    const TemporaryFolder folder;
    const Ran ran =
        run("cornerglim add-lamp '" + theme("b") + "' --step 15", folder.path().string());
    CHECK(ran.exit_code == 0);
    CHECK(ran.output.find("no lamp has to be added") != std::string::npos);
}

TEST_CASE("a study that names no carriers is refused, and nothing is written", "[app]")
{
    const TemporaryFolder folder;
    const Ran ran = run("cornerglim add-lamp '" + studies() + "/walled.toml' --out out",
                        folder.path().string());
    CHECK(ran.exit_code == 2);
    CHECK(ran.errors.find("[add_lamp]") != std::string::npos);
    CHECK_FALSE(std::filesystem::exists(folder / "out"));
}

TEST_CASE(
    "a lamp that fills the gap is confirmed by check where the rule lets lamps answer together",
    "[app]")
{
    const TemporaryFolder folder;
    std::ofstream(folder / "study.toml") << "format = 1\nbase = \"" << theme("a") << "\"\n"
                                         << "[[check]]\nname = \"front turn signal area\"\n"
                                         << "remove = true\n"
                                         << "[[check]]\nname = \"across the nose\"\n"
                                         << "table = \"together\"\n";
    const Ran ran =
        run("sed 's/\"one_alone\"/\"union\"\\nunion_source = \"made up\"/' '" GLIM_SOURCE_DIR
            "/requirements-tables/own-example.toml' > together.toml && "
            "cornerglim add-lamp study.toml --step 15 --quiet --out out && "
            "cornerglim check out/filling.toml --step 15 --quiet",
            folder.path().string());
    INFO(ran.output << ran.errors);
    CHECK(ran.exit_code == 0);
    const nlohmann::json answer = json_in(folder / "out/add-lamp.json");
    REQUIRE_FALSE(answer["only_together"].empty());
    CHECK(answer["only_together"][0]["lens_mm2"].get<double>() <=
          answer["alone"][0]["lens_mm2"].get<double>());
}
