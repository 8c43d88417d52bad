// Brightness and sides. The lens and the knife edge of light_test.cpp: 60 x 40 mm, an edge for
// y > 50 mm that stands 40 mm ahead.

#include "judgement/shine.h"

#include "judgement/asked_light.h"
#include "judgement/check_study.h"
#include "judgement/made_rules.h"
#include "shapes/made_light.h"
#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

TEST_CASE("a luminance picture with a bright half gives a shadow its due", "[judgement]")
{
    // The edge hides y > 10 at H 45, the third of the lens outboard. Seen from before the lamp,
    // +y is to the right. Bright on the left only: nothing is lost. Bright on the right only: of
    // its 30 mm the edge leaves 10.
    Study study = lit_behind_knife_edge(lambert(3));
    study.sampling.feature = millimetres(0.5);
    study.lamps[LampId{0}].axis = Direction::x();
    const auto picture = [](std::vector<float> grey) {
        return LuminancePicture{
            .file = "made.png", .columns = 2, .rows = 1, .grey = std::move(grey)};
    };
    study.lights.front().brightness = picture({1, 0});
    const Findings dark_side = asked(study, at_least_cd(2), 45, 45);
    CHECK(answer(dark_side).outcome == Outcome::proof_due);
    CHECK(cd(verdict(dark_side).light->left) == Approx(3 * cos(degrees(45))).epsilon(1e-6));
    study.lights.front().brightness = picture({0, 1});
    const Findings bright_side = asked(study, at_least_cd(2), 45, 45);
    CHECK(cd(verdict(bright_side).light->left) == Approx(3 * cos(degrees(45)) / 3).epsilon(0.01));
    CHECK(verdict(bright_side).estimate->suffices == false);
    CHECK(bright_side.looks.front().light->brightness == 2);
}

TEST_CASE("a twin is bright where the drawn lamp's mirror image is", "[judgement]")
{
    Study study = lit_behind_knife_edge(lambert(3));
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
    const Findings f = asked(study, at_least_cd(2), 45, 45);
    const std::vector<LampVerdict>& lamps = answer(f).rows.front().lamps;
    REQUIRE(lamps.size() == 2);
    CHECK(cd(lamps[1].light->left) == Approx(cd(lamps[0].light->left)).epsilon(0.01));
    CHECK(cd(lamps[0].light->left) == Approx(cos(degrees(45))).epsilon(0.05));
}

TEST_CASE("outboard stays outboard for the lamp on the other side", "[judgement]")
{
    // Twice as much outboard as inboard.
    Study study = lit_in_the_open([](double h, double) { return h > 0 ? 4.0 : 2.0; });
    study.surfaces[SurfaceId{0}].mirror = MirrorRule::yes;
    study.surfaces[SurfaceId{0}].mesh = plate({0, 600, 0}, 60, 40);
    study.lamps[LampId{0}].paired = true;
    study.surfaces.add({.name = "leaf",
                        .role = Role::opaque,
                        .mirror = MirrorRule::no,
                        .mesh = wall(-900, 900, 901, 0, 1),
                        .clear_for = {}});
    const Findings f = asked(study, at_least_cd(3), 10, 30);
    REQUIRE(answer(f).rows.front().lamps.size() == 2);
    for (const LampVerdict& lamp : answer(f).rows.front().lamps)
        CHECK(lamp.outcome == Outcome::met);
    CHECK(answer(asked(study, at_least_cd(3), -30, -10)).outcome == Outcome::not_met);
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
    const Findings f = asked(study, at_least_cd(6), 0, 0);
    CHECK(answer(f).outcome == Outcome::proof_due);
    CHECK(cd(verdict(f).light->left) == Approx(7).epsilon(1e-6));
}

namespace {

/// The lens behind the knife edge with 2 cd, and one 60 mm further inboard with 3 cd, which the
/// edge hides later: its share is clamp((50 + 60 - 40 tanH + 30) / 60, 0, 1).
Study two_behind_knife_edge()
{
    Study study = lit_behind_knife_edge(lambert(2));
    const LampId second =
        add_lamp(study, "second", LampFunction::front_indicator, plate({0, -60, 0}, 60, 40));
    study.lights.push_back(made_light(lambert(3), second));
    return study;
}

Findings asked_together(Study study, RuleRow row)
{
    row.answered_by = AnsweredBy::together;
    row.union_source = "invented for this test";
    study = asking(std::move(study), row.id, {row});
    study.checks.front().lamps.push_back(LampId{1});
    return check_study(study);
}

Findings asked_together(Study study, double least_cd, double h0, double h1)
{
    return asked_together(std::move(study), made_row("light", at_least_cd(least_cd), h0, h1, 0, 0));
}

const LampVerdict& together(const Findings& f) { return answer(f).rows.front().together.value(); }

} // namespace

TEST_CASE("lamps that may answer together add their light", "[judgement]")
{
    const Findings f = asked_together(two_behind_knife_edge(), 4.9, 0, 0);
    CHECK(answer(f).outcome == Outcome::met);
    CHECK(cd(together(f).light->whole) == Approx(5));
    CHECK(answer(f).rows.front().lamps.front().outcome == Outcome::not_met);
    CHECK(answer(asked_together(two_behind_knife_edge(), 5.1, 0, 0)).outcome == Outcome::not_met);
}

TEST_CASE("what is left of two lamps is the sum of each one's own share", "[judgement]")
{
    const Findings f = asked_together(two_behind_knife_edge(), 0.3, 0, 70);
    CHECK(answer(f).outcome == Outcome::proof_due);
    const LampLook& look = f.looks[together(f).look];
    CHECK(look.name == "indicator + second");
    for (const DirectionVerdict& d : together(f).directions) {
        const Angle h = look.toward[d.at].h;
        const auto share = [&](double room) {
            return std::clamp((room - 40 * sin(h) / cos(h)) / 60, 0.0, 1.0);
        };
        INFO(in_degrees(h));
        CHECK(cd(look.light->toward[d.at].whole) == Approx(5 * cos(h)));
        CHECK(cd(look.light_left(d.at)) ==
              Approx(cos(h) * (2 * share(80) + 3 * share(140))).margin(2e-3));
    }
    // At H 70 nothing of the first is left and 0.5017 of the second: 3 cos 70 x 0.5017 cd.
    CHECK(together(asked_together(two_behind_knife_edge(), 0.51, 70, 70)).estimate->suffices ==
          true);
    CHECK(together(asked_together(two_behind_knife_edge(), 0.52, 70, 70)).estimate->suffices ==
          false);
    // Each alone is not met at all, or hides too much.
    CHECK(answer(asked_together(two_behind_knife_edge(), 1.8, 70, 70)).outcome ==
          Outcome::not_met); // 5 cos 70 = 1.7101 cd
}

TEST_CASE("two lamps together are known as far as both were measured", "[judgement]")
{
    Study study = two_behind_knife_edge();
    study.lights.back() = made_light_within(45, lambert(3), LampId{1});
    CHECK(answer(asked_together(study, 2, 0, 20)).outcome == Outcome::met);
    const Findings beyond = asked_together(study, 0.1, 50, 50);
    CHECK(answer(beyond).outcome == Outcome::undecided);
    CHECK(together(beyond).because == Because::outside_measured_range);
    study.lights.pop_back();
    CHECK(answer(asked_together(study, 2, 0, 20)).outcome == Outcome::no_photometric_data);
}

TEST_CASE("areas add up where rows of area let lamps answer together", "[judgement]")
{
    // Both in full view: 2 x 60 x 40 mm2. At H 45: (2/3 + 1) x 2400 cos 45 = 2828.43.
    const auto area = [](double mm2, double h) {
        return made_row("area", LeastArea{square_millimetres(mm2)}, h, h, 0, 0);
    };
    CHECK(answer(asked_together(two_behind_knife_edge(), area(4799, 0))).outcome == Outcome::met);
    CHECK(answer(asked_together(two_behind_knife_edge(), area(4801, 0))).outcome ==
          Outcome::not_met);
    const Findings f = asked_together(two_behind_knife_edge(), area(2828, 45));
    CHECK(answer(f).outcome == Outcome::met);
    CHECK(in_mm2(together(f).least_visible) == Approx(2828.43).epsilon(1e-5));
    CHECK(answer(asked_together(two_behind_knife_edge(), area(2829, 45))).outcome ==
          Outcome::not_met);
}
