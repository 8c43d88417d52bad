#include "input/trim_lit_faces.h"

#include "input/bad_files.h"
#include "input/small_study.h"

using namespace glim;
using namespace glim::test;

namespace {

/// The small front's lens is a plate at x = -500: y from -700 to -600, z from 650 to 700.
Study trimmed_by(const std::string& trim)
{
    return study_of(with(small_study, "emits = [\"lens\"]", "emits = [\"lens\"]\ntrim = " + trim));
}

const Surface& lit_surface(const Study& study)
{
    return study.surfaces[study.lamps[LampId{0}].emits[0]];
}

} // namespace

TEST_CASE("a trimmed lamp shines from a part of its lens, and the lens stays whole", "[input]")
{
    const Study study = trimmed_by("{ inset = 5 }");
    const Lamp& lamp = study.lamps[LampId{0}];
    REQUIRE(lamp.emits.size() == 1);
    const Surface& lit = lit_surface(study);
    CHECK(lit.name == "lit part of indicator");
    CHECK(in_mm2(area_of(lit.mesh)) == Approx(90 * 40).epsilon(1e-7));
    CHECK(lit.mirror == MirrorRule::yes);
    CHECK(lit.lit_part_of == SurfaceId{0});
    CHECK_FALSE(lit.blocks());
    CHECK(study.surfaces[SurfaceId{0}].blocks());
    CHECK(in_mm2(area_of(study.surfaces[SurfaceId{0}].mesh)) == Approx(5000));
    CHECK(lamp.approved_with == std::vector{SurfaceId{0}});
    REQUIRE(lamp.trim);
    CHECK(lamp.trim->inset == millimetres(5));
    CHECK(std::any_of(study.warnings.begin(), study.warnings.end(), [](const Warning& w) {
        return w.what == "lamp `indicator` shines from 3600 of the 5000 mm2 of its lit surfaces, "
                         "as its trim says";
    }));
}

TEST_CASE("a trim by curve or box cuts where it says", "[input]")
{
    CHECK(in_mm2(area_of(lit_surface(trimmed_by("{ box = { least = [-600, -690, 0], most = "
                                                "[-400, -650, 680] } }"))
                             .mesh)) == Approx(40 * 30));
    CHECK(in_mm2(area_of(lit_surface(trimmed_by("{ curve = [[0, -690, 660], [0, -610, 660], "
                                                "[0, -650, 690]] }"))
                             .mesh)) == Approx(80 * 30 / 2.0));
}

TEST_CASE("a trim's curve may come from a file beside the study", "[input]")
{
    const TemporaryFolder folder;
    write(folder / "corner.obj", corner_obj);
    write(folder / "outline.obj",
          "v 0 -690 660\nv 0 -610 660\nv 0 -610 690\nv 0 -690 690\nl 1 2 3 4 1\n");
    write(folder / "study.toml", with(small_study, "emits = [\"lens\"]",
                                      "emits = [\"lens\"]\ntrim = { curve = \"outline.obj\" }"));
    const Study study = read_study(folder / "study.toml");
    CHECK(in_mm2(area_of(lit_surface(study).mesh)) == Approx(80 * 30));
}

TEST_CASE("two lamps of one lens may be trimmed each in its own way", "[input]")
{
    const std::string other = "\n[[lamp]]\nname = \"position\"\nfunction = \"front_position\"\n"
                              "side = \"left\"\nemits = [\"lens\"]\ntrim = { inset = 20 }\n"
                              "surface_basis = \"light_emitting\"\n";
    const Study study = study_of(
        with(small_study, "emits = [\"lens\"]", "emits = [\"lens\"]\ntrim = { inset = 5 }") +
        other);
    const auto lit = [&](std::uint32_t lamp) {
        return in_mm2(area_of(study.surfaces[study.lamps[LampId{lamp}].emits[0]].mesh));
    };
    CHECK(lit(0) == Approx(3600).epsilon(1e-7));
    CHECK(lit(1) == Approx(600).epsilon(1e-7));
    CHECK(study.lamps[LampId{0}].surface_basis == SurfaceBasis::declared);
    CHECK(study.lamps[LampId{1}].surface_basis == SurfaceBasis::light_emitting);
}

TEST_CASE("a trim that leaves nothing or cannot cut is complained of", "[input]")
{
    const auto said = [](const std::string& trim) {
        return complaints_of([&] { trimmed_by(trim); });
    };
    CHECK(said("{ inset = 25 }").find("leaves nothing of the lit surfaces") != std::string::npos);
    CHECK(said("{ curve = [[0, 0, 0], [0, 9, 9], [0, 9, 0], [0, 0, 9]] }").find("crosses itself") !=
          std::string::npos);
    CHECK(said("{}").find("cuts nothing") != std::string::npos);
    const std::string closed =
        with(with(small_study, "{ object = \"lens\" }", "{ object = \"shell\" }"),
             "role = \"emitting\"", "role = \"emitting\"\norient = \"as-is\"");
    CHECK(complaints_of([&] {
              study_of(
                  with(closed, "emits = [\"lens\"]", "emits = [\"lens\"]\ntrim = { inset = 1 }"));
          }).find("have no open edge") != std::string::npos);
}
