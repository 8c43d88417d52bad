#include "app/run.h"
#include "machine/temporary_folder.h"

#include <nlohmann/json.hpp>

#include <catch2/catch.hpp>

#include <fstream>
#include <iterator>
#include <set>

using namespace glim;
using namespace glim::test;

namespace {

const std::string theme = GLIM_SOURCE_DIR "/meshes/demo/theme-b.toml";

/// Tightest first, and inside exactly where something reaches in.
void check_headroom(const nlohmann::json& answer)
{
    std::set<std::string> inside, intruding;
    for (const auto& space : answer["spaces"])
        for (const auto& intrusion : space["intrusions"])
            intruding.insert(intrusion["surface"].get<std::string>());
    double before = -1000;
    for (const auto& surface : answer["headroom"]["surfaces"]) {
        const double least = surface["least_mm"].is_null()
                                 ? answer["headroom"]["free_from_mm"].get<double>()
                                 : surface["least_mm"].get<double>();
        CHECK(least >= before);
        before = least;
        if (least < 0)
            inside.insert(surface["surface"].get<std::string>());
    }
    CHECK(before == 100);
    CHECK(inside == intruding);
    CHECK(inside.count("nose") == 1);
}

} // namespace

TEST_CASE("theme B's spaces are drawn, and what reaches into them is told", "[app]")
{
    const TemporaryFolder folder;
    const Ran found =
        run("cornerglim keep-clear '" + theme + "' --out out --quiet", folder.path().string());
    INFO(found.output << found.errors);
    CHECK(found.exit_code == 1);
    CHECK(found.output.find("Not clear: ") == 0);
    std::ifstream stream(folder / "out/keep-clear.json");
    const nlohmann::json answer = nlohmann::json::parse(stream);
    CHECK(answer["clear"] == false);
    CHECK(answer["command"] == "cornerglim keep-clear theme-b.toml");
    CHECK(answer["study"].get<std::string>().find("theme-b.toml") != std::string::npos);
    for (const char* file : {"keep-clear.html", "keep-clear.txt"}) {
        std::ifstream written(folder / "out" / file);
        const std::string text((std::istreambuf_iterator<char>(written)), {});
        CHECK(text.find("cornerglim keep-clear theme-b.toml") != std::string::npos);
    }
    CHECK(answer["caution"].get<std::string>().find("homologation engineer") != std::string::npos);
    for (const auto& space : answer["spaces"]) {
        CHECK(space["volume_mm3"].get<double>() > 0);
        CHECK(space["kept"] == "outer");
        CHECK(std::filesystem::exists(folder / "out" / space["mesh"].get<std::string>()));
    }
    for (const char* file :
         {"v-b-front-indicator.obj", "v-b-front-indicator-into-nose.ply",
          "v-b-front-indicator-into-nose.png", "keep-clear.html", "keep-clear.pdf",
          "keep-clear.txt", "spaces.csv", "intrusions.csv", "headroom.ply", "headroom.png",
          "headroom.csv", "headroom-by-space.csv"})
        CHECK(std::filesystem::exists(folder / "out" / file));
    check_headroom(answer);
    std::ifstream spaces(folder / "out/spaces.csv");
    const std::string table((std::istreambuf_iterator<char>(spaces)), {});
    CHECK(table.find(",least_shown_mm2,lamp_too_small,not_needed\n") != std::string::npos);
    CHECK(table.find(",no,no\n") != std::string::npos);
}

TEST_CASE("a lens alone has a space where the study says how far it reaches", "[app]")
{
    const TemporaryFolder folder;
    const std::string base = "format = 1\nbase = \"" + studies() + "/clear.toml\"\n";
    std::ofstream(folder / "endless.toml") << base;
    std::ofstream(folder / "boxed.toml")
        << base << "[keep_clear]\nbox = { least = [-900, -900, 0], most = [300, 900, 1000] }\n";
    const Ran endless = run("cornerglim keep-clear endless.toml", folder.path().string());
    CHECK(endless.exit_code == 2);
    CHECK(endless.errors.find("nothing but lamps is drawn") != std::string::npos);
    const Ran found = run("cornerglim keep-clear boxed.toml", folder.path().string());
    INFO(found.output << found.errors);
    CHECK(found.exit_code == 0);
    CHECK(found.output.find("Clear: nothing of the study reaches into") == 0);
    CHECK(found.output.find("does not certify") != std::string::npos);
}

TEST_CASE("a wall before the lamp is named with its depth", "[app]")
{
    const TemporaryFolder folder;
    const Ran found = run("cornerglim keep-clear '" + studies() + "/walled.toml' --quiet",
                          folder.path().string());
    INFO(found.output << found.errors);
    CHECK(found.exit_code == 1);
    CHECK(found.output.find("Not clear: `wall` reaches ") == 0);
}
