#include "app/run.h"
#include "input/read_photometry.h"
#include "machine/temporary_folder.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::test;

namespace {

const std::string theme = GLIM_SOURCE_DIR "/meshes/demo/theme-a-light.toml";

} // namespace

TEST_CASE("what is left of a lamp's light is written and reads back", "[app]")
{
    const TemporaryFolder folder;
    const Ran ran = run("cornerglim check '" + theme + "' --step 15 --quiet --out out --write-ies",
                        folder.path().string());
    CHECK(ran.exit_code == 1);
    CHECK(ran.errors.empty());
    const auto file = folder / "out/light/indicator-forward.ies";
    REQUIRE(std::filesystem::exists(file));
    CHECK(!std::filesystem::exists(folder / "out/light/indicator-outboard.ies"));
    const Photometry left = read_photometry(file, "left").photometry;
    const Photometry whole =
        read_photometry(GLIM_SOURCE_DIR "/meshes/demo/indicator.ies", "whole").photometry;
    CHECK(left.grid.goniometer == Goniometer::a);
    // On the axis nothing is hidden; across the nose, to the right of the left lamp, most is.
    const auto at = [](const Photometry& p, double h, double v) {
        return in_candelas(intensity_at(p.grid, {degrees(h), degrees(v)}).value());
    };
    CHECK(at(left, 0, 0) == Approx(at(whole, 0, 0)).epsilon(1e-4)); // four digits are written
    CHECK(at(left, 45, 0) < 0.6 * at(whole, 45, 0));
    CHECK(at(left, 45, 0) > 0.2 * at(whole, 45, 0));
    CHECK(at(left, -60, 0) == Approx(at(whole, -60, 0)).epsilon(0.01));
}

TEST_CASE("the summary of a lamp partly hidden tells its light and the estimate", "[app]")
{
    const TemporaryFolder folder;
    const Ran ran = run("cornerglim check '" + theme + "' --step 15 | tr -s ' \\n' ' '",
                        folder.path().string());
    for (const char* told :
         {"0.3 cd needed, H -45, V -15",
          "the visible part would suffice: an estimate; measurement "
          "due",
          "every part of the lit face equally bright in that direction",
          "rows of area count every part of the lens", "the proof, from un-r148; ", " (estimate)",
          "multiplier x 2: gap to dipped beam"}) {
        INFO(ran.output);
        CHECK(ran.output.find(told) != std::string::npos);
    }
}

TEST_CASE("light can only be written into a folder", "[app]")
{
    const TemporaryFolder folder;
    const Ran ran = run("cornerglim check '" + theme + "' --write-ies", folder.path().string());
    CHECK(ran.exit_code == 2);
    CHECK(ran.errors.find("--write-ies has no folder to write to") != std::string::npos);
}

TEST_CASE("where no lamp has photometric data, that no light was written is noted", "[app]")
{
    const TemporaryFolder folder;
    std::string dark = theme;
    dark.replace(dark.rfind("theme-a-light"), 13, "theme-a");
    const Ran ran = run("cornerglim check '" + dark + "' --step 15 --quiet --out out --write-ies",
                        folder.path().string());
    CHECK(ran.errors.find("--write-ies wrote no file") != std::string::npos);
    CHECK(!std::filesystem::exists(folder / "out/light"));
}
