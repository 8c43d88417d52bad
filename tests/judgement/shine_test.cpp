// Brightness and sides. The lens and the knife edge of light_test.cpp: 60 x 40 mm, an edge for
// y > 50 mm that stands 40 mm ahead.

#include "judgement/shine.h"

#include "judgement/check_study.h"
#include "judgement/made_rules.h"
#include "shapes/made_light.h"
#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

const CheckFindings& answer(const Findings& f) { return f.checks.front(); }
const LampVerdict& verdict(const Findings& f, std::size_t row = 0)
{
    return f.checks.front().rows[row].lamps.front();
}

Study behind_knife_edge(const MadeField& field)
{
    Study study = lamp_behind(plate(Point::Zero(), 60, 40), {wall(40, 50, 500, -300, 300)});
    study.lights = {made_light(field)};
    study.sampling.step = degrees(5);
    return study;
}

Study in_the_open(const MadeField& field)
{
    Study study = lamp_alone(plate(Point::Zero(), 60, 40));
    study.lights = {made_light(field)};
    study.sampling.step = degrees(5);
    return study;
}

LeastIntensity at_least(double cd) { return {candelas(cd)}; }

Findings asked(Study study, Criterion criterion, double h0, double h1, double v0 = 0, double v1 = 0)
{
    return check_study(asking(std::move(study), "light",
                              {made_row("light", std::move(criterion), h0, h1, v0, v1)}));
}

double cd(const std::optional<Intensity>& intensity) { return in_candelas(intensity.value()); }

} // namespace

TEST_CASE("a luminance picture with a bright half gives a shadow its due", "[judgement]")
{
    // The edge hides y > 10 at H 45, the third of the lens outboard. Seen from before the lamp,
    // +y is to the right. Bright on the left only: nothing is lost. Bright on the right only: of
    // its 30 mm the edge leaves 10.
    Study study = behind_knife_edge(lambert(3));
    study.sampling.feature = millimetres(0.5);
    study.lamps[LampId{0}].axis = Direction::x();
    const auto picture = [](std::vector<float> grey) {
        return LuminancePicture{
            .file = "made.png", .columns = 2, .rows = 1, .grey = std::move(grey)};
    };
    study.lights.front().brightness = picture({1, 0});
    const Findings dark_side = asked(study, at_least(2), 45, 45);
    CHECK(answer(dark_side).outcome == Outcome::proof_due);
    CHECK(cd(verdict(dark_side).light->left) == Approx(3 * cos(degrees(45))).epsilon(1e-6));
    study.lights.front().brightness = picture({0, 1});
    const Findings bright_side = asked(study, at_least(2), 45, 45);
    CHECK(cd(verdict(bright_side).light->left) == Approx(3 * cos(degrees(45)) / 3).epsilon(0.01));
    CHECK(verdict(bright_side).estimate->suffices == false);
    CHECK(bright_side.looks.front().light->brightness == 2);
}

TEST_CASE("a twin is bright where the drawn lamp's mirror image is", "[judgement]")
{
    Study study = behind_knife_edge(lambert(3));
    for (Surface& surface : study.surfaces) {
        surface.mirror = MirrorRule::yes;
        surface.mesh = moved(surface.mesh, {0, 600, 0});
    }
    study.lamps[LampId{0}].paired = true;
    study.surfaces[SurfaceId{1}].mesh = wall(40, 650, 1100, -300, 300);
    // Not symmetric, so that the twin is looked at: a leaf far away on one side.
    study.surfaces.add({.name = "leaf",
                        .role = Role::opaque,
                        .mirror = MirrorRule::no,
                        .mesh = wall(-900, 900, 901, 0, 1),
                        .clear_for = {}});
    study.lamps[LampId{0}].axis = Direction::x();
    study.lights.front().brightness =
        LuminancePicture{.file = "made.png", .columns = 2, .rows = 1, .grey = {0, 1}};
    const Findings f = asked(study, at_least(2), 45, 45);
    const std::vector<LampVerdict>& lamps = answer(f).rows.front().lamps;
    REQUIRE(lamps.size() == 2);
    CHECK(cd(lamps[1].light->left) == Approx(cd(lamps[0].light->left)).epsilon(0.01));
    CHECK(cd(lamps[0].light->left) == Approx(cos(degrees(45))).epsilon(0.05));
}

TEST_CASE("outboard stays outboard for the lamp on the other side", "[judgement]")
{
    // Twice as much outboard as inboard.
    Study study = in_the_open([](double h, double) { return h > 0 ? 4.0 : 2.0; });
    study.surfaces[SurfaceId{0}].mirror = MirrorRule::yes;
    study.surfaces[SurfaceId{0}].mesh = plate({0, 600, 0}, 60, 40);
    study.lamps[LampId{0}].paired = true;
    study.surfaces.add({.name = "leaf",
                        .role = Role::opaque,
                        .mirror = MirrorRule::no,
                        .mesh = wall(-900, 900, 901, 0, 1),
                        .clear_for = {}});
    const Findings f = asked(study, at_least(3), 10, 30);
    REQUIRE(answer(f).rows.front().lamps.size() == 2);
    for (const LampVerdict& lamp : answer(f).rows.front().lamps)
        CHECK(lamp.outcome == Outcome::met);
    CHECK(answer(asked(study, at_least(3), -30, -10)).outcome == Outcome::not_met);
}

TEST_CASE("each lit surface sends the share of the light that it is said to", "[judgement]")
{
    // Two plates side by side, the outer one wholly hidden: what is left is the inner one's share.
    Study study = lamp_behind(plate({0, -50, 0}, 60, 40), {wall(20, 20, 500, -300, 300)});
    const SurfaceId outer = study.surfaces.add({.name = "outer",
                                                .role = Role::emitting,
                                                .mirror = MirrorRule::no,
                                                .mesh = plate({0, 50, 0}, 30, 40),
                                                .clear_for = {}});
    study.lamps[LampId{0}].emits.push_back(outer);
    study.lights = {made_light(lambert(10))};
    study.lights.front().brightness = BrightBySurface{{0.7, 0.3}};
    const Findings f = asked(study, at_least(6), 0, 0);
    CHECK(answer(f).outcome == Outcome::proof_due);
    CHECK(cd(verdict(f).light->left) == Approx(7).epsilon(1e-6));
}
