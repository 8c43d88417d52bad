// Rows of light. The lens is 60 x 40 mm and flat; a knife edge for y > 50 mm stands 40 mm ahead of
// it. Its visible share is clamp((50 - 40 tanH + 30) / 60, 0, 1) at any V: 2/3 at H 45, all of it
// up to 26.565 outboard (closed form). An equally bright patch with 3 cd on its axis sends
// 3 cosV cosH before the edge and that share of it behind.

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

namespace {

/// A row whose field is that of the points.
RuleRow points_row(LightTable table)
{
    RuleRow row = made_row("points", LightTable{});
    row.field = field_of(table);
    row.criterion = std::move(table);
    return row;
}

LightPoint point(double h, double v, double least)
{
    return {{degrees(h), degrees(v)}, candelas(least)};
}

} // namespace

TEST_CASE("without a photometric file there is no answer about light", "[judgement]")
{
    Study study = lit_in_the_open(lambert(3));
    study.lights.clear();
    const Findings f = asked(study, at_least_cd(0.3), -45, 45);
    CHECK(answer(f).outcome == Outcome::no_photometric_data);
    CHECK(verdict(f).directions.empty());
    CHECK(!verdict(f).light);
}

TEST_CASE("where nothing is hidden the file decides", "[judgement]")
{
    // 3 cos 80 = 0.52094, 3 cos 80 cos 15 = 0.50319 cd.
    CHECK(answer(asked(lit_in_the_open(lambert(3)), at_least_cd(0.5), -80, 80, -15, 15)).outcome ==
          Outcome::met);
    const Findings f = asked(lit_in_the_open(lambert(3)), at_least_cd(0.51), -80, 80, -15, 15);
    CHECK(answer(f).outcome == Outcome::not_met);
    CHECK(verdict(f).because == Because::too_little_light);
    CHECK(cd(verdict(f).light->whole) == Approx(0.50319).epsilon(1e-4));
    CHECK(cd(verdict(f).light->left) == Approx(0.50319).epsilon(1e-4));
    CHECK(!verdict(f).estimate);
}

TEST_CASE("a patch behind a knife edge keeps the share of its light that the closed form gives",
          "[judgement]")
{
    // 3 cos 45 x 2/3 = 1.41421 cd.
    const Findings f = asked(lit_behind_knife_edge(lambert(3)), at_least_cd(1.4), 0, 45);
    CHECK(answer(f).outcome == Outcome::proof_due);
    CHECK(cd(verdict(f).light->whole) == Approx(3 * cos(degrees(45))));
    CHECK(cd(verdict(f).light->left) == Approx(1.41421).epsilon(1e-5));
    REQUIRE(verdict(f).estimate);
    CHECK(verdict(f).estimate->suffices == true);
    const LampLook& look = f.looks[verdict(f).look];
    for (const DirectionVerdict& d : verdict(f).directions) {
        const Angle h = look.toward[d.at].h;
        const double share = std::clamp((80 - 40 * sin(h) / cos(h)) / 60, 0.0, 1.0);
        INFO(in_degrees(h));
        CHECK(cd(look.light_left(d.at)) == Approx(3 * cos(h) * share).epsilon(1e-3));
        CHECK(d.outcome == (share < 1 ? Outcome::proof_due : Outcome::met));
    }
}

TEST_CASE("an estimate that falls short stays an estimate", "[judgement]")
{
    const Findings f = asked(lit_behind_knife_edge(lambert(3)), at_least_cd(1.43), 0, 45);
    CHECK(answer(f).outcome == Outcome::proof_due);
    REQUIRE(verdict(f).estimate);
    CHECK(verdict(f).estimate->suffices == false);
}

TEST_CASE("what even the whole lamp does not give fails, whatever is hidden", "[judgement]")
{
    const Findings f = asked(lit_behind_knife_edge(lambert(3)), at_least_cd(2.2), 0, 45);
    CHECK(answer(f).outcome == Outcome::not_met);
    CHECK(verdict(f).because == Because::too_little_light);
}

TEST_CASE("a lamp that is wholly hidden has nothing left to prove", "[judgement]")
{
    Study study = lamp_behind(plate(Point::Zero(), 60, 40), {wall(40, -300, 300, -300, 300)});
    study.lights = {made_light(lambert(3))};
    const Findings f = asked(study, at_least_cd(0.3), 0, 0);
    CHECK(answer(f).outcome == Outcome::not_met);
    CHECK(verdict(f).because == Because::wholly_hidden);
}

TEST_CASE("beyond what was measured the light is not known, not zero", "[judgement]")
{
    Study study = lit_in_the_open(lambert(3));
    study.lights = {made_light_within(45, lambert(3))};
    CHECK(answer(asked(study, at_least_cd(0.3), -45, 45)).outcome == Outcome::met);
    const Findings f = asked(study, at_least_cd(0.3), -45, 50);
    CHECK(answer(f).outcome == Outcome::undecided);
    CHECK(verdict(f).because == Because::outside_measured_range);
    CHECK(!verdict(f).light->whole);
}

TEST_CASE("light where the lamp shows no surface is a finding of its own", "[judgement]")
{
    // Turned 50 outboard, the lens shows nothing from 40 inboard on.
    Study study = lamp_alone(turned(plate(Point::Zero(), 60, 40), degrees(50)));
    study.lights = {made_light([](double, double) { return 5; })};
    const Findings f = asked(study, at_least_cd(0.3), -45, 0);
    CHECK(answer(f).outcome == Outcome::undecided);
    CHECK(verdict(f).because == Because::light_without_surface);
    CHECK(f.looks[verdict(f).look].light->toward.front().shows_no_surface);
}

TEST_CASE("what the approved housing hides is in the file already and counts no second time",
          "[judgement]")
{
    Study study = lit_behind_knife_edge(lambert(3));
    study.lamps[LampId{0}].approved_with = {SurfaceId{1}};
    const Findings f = asked(study, at_least_cd(2.1), 0, 45);
    CHECK(answer(f).outcome == Outcome::met);
    CHECK(cd(verdict(f).light->left) == Approx(3 * cos(degrees(45))));
}

TEST_CASE("a cover that was not there when it was measured lets its share through", "[judgement]")
{
    Study study = lit_in_the_open(lambert(3));
    study.lights.front().transmittance = 0.5;
    const Findings f = asked(study, at_least_cd(1.6), 0, 0);
    CHECK(answer(f).outcome == Outcome::not_met);
    CHECK(cd(verdict(f).light->whole) == Approx(1.5));
}

TEST_CASE("too much light is judged by the lamp itself", "[judgement]")
{
    CHECK(answer(asked(lit_behind_knife_edge(lambert(3)), MostIntensity{candelas(3)}, 0, 45))
              .outcome == Outcome::met);
    const Findings f =
        asked(lit_behind_knife_edge(lambert(3)), MostIntensity{candelas(2.9)}, 0, 45);
    CHECK(answer(f).outcome == Outcome::not_met);
    CHECK(verdict(f).because == Because::too_much_light);
    CHECK(verdict(f).relative_margin == Approx(1 - 3 / 2.9));
}

TEST_CASE("a group may lack in a point what another has, down to the floor", "[judgement]")
{
    // 10, 2 and 12 cd on the axis and 10 to either side; 20 are needed, 10 each, 60 % at least.
    const auto group = [](double floor, double total) {
        return LightTable{.points = {},
                          .groups = {{"1",
                                      candelas(total),
                                      {point(0, 0, 10), point(10, 0, 10), point(-10, 0, 10)}}},
                          .floor = floor};
    };
    const MadeField field = [](double h, double) { return h > 5 ? 2.0 : h < -5 ? 12.0 : 10.0; };
    const Study study = lit_in_the_open(field);
    CHECK(answer(check_study(asking(study, "points", {points_row(group(0.2, 24))}))).outcome ==
          Outcome::met);
    const Findings low = check_study(asking(study, "points", {points_row(group(0.6, 24))}));
    CHECK(answer(low).outcome == Outcome::not_met);
    CHECK(cd(verdict(low).light->whole) == Approx(2));
    CHECK(in_candelas(verdict(low).light->needed) == Approx(6));
    const Findings sum = check_study(asking(study, "points", {points_row(group(0.2, 25))}));
    CHECK(answer(sum).outcome == Outcome::not_met);
    CHECK(verdict(sum).because == Because::too_little_light);
    REQUIRE(verdict(sum).light->worst_group == 0);
    CHECK(cd(verdict(sum).light->groups[0].whole) == Approx(24));
}

TEST_CASE("a group with a hidden point has its proof due, and its sum is estimated", "[judgement]")
{
    // At H 45 two thirds of 3 cos 45 are left, at H 0 all of 3: 4.41421 cd of 5.12132.
    const auto table = [](double total) {
        return LightTable{.points = {},
                          .groups = {{"1", candelas(total), {point(0, 0, 1), point(45, 0, 1)}}},
                          .floor = 0.6};
    };
    const Study study = lit_behind_knife_edge(lambert(3));
    const Findings enough = check_study(asking(study, "points", {points_row(table(4.4))}));
    CHECK(answer(enough).outcome == Outcome::proof_due);
    CHECK(cd(verdict(enough).light->groups[0].left) == Approx(4.41421).epsilon(1e-4));
    CHECK(verdict(enough).estimate->suffices == true);
    const Findings less = check_study(asking(study, "points", {points_row(table(4.5))}));
    CHECK(answer(less).outcome == Outcome::proof_due);
    CHECK(verdict(less).estimate->suffices == false);
    const Findings never = check_study(asking(study, "points", {points_row(table(5.2))}));
    CHECK(answer(never).outcome == Outcome::not_met);
}

TEST_CASE("points that fall away for a low lamp take their least off the group", "[judgement]")
{
    RuleRow row = points_row({.points = {},
                              .groups = {{"1", candelas(20), {point(0, 0, 10), point(0, -10, 10)}}},
                              .floor = 0.6});
    row.relaxations.push_back(
        {.when = {{.quantity = Measured::h_plane_height, .below = millimetres(750)}},
         .field = {{rectangle(0, 0, 0, 0)}},
         .citation = {}});
    const MadeField field = [](double, double v) { return v < -5 ? 0.5 : 10.0; };
    Study study = lit_in_the_open(field);
    CHECK(answer(check_study(asking(study, "points", {row}))).outcome == Outcome::not_met);
    study.grounds.front().ground.on.z() = -700;
    const Findings low = check_study(asking(study, "points", {row}));
    CHECK(answer(low).outcome == Outcome::met);
    CHECK(in_candelas(verdict(low).light->groups[0].needed) == Approx(10));
}

TEST_CASE("the gap to the dipped beam multiplies what is asked", "[judgement]")
{
    // The centroid at y = 0, the beam's edge 80 mm away: 1.5 times.
    const GapToLamp gap{
        .to = {LampFunction::dipped_beam},
        .from = GapFrom::centroid,
        .steps = {{millimetres(100), "1"}, {millimetres(75), "1.5"}, {millimetres(0), "2.5"}},
        .is_category = false};
    RuleRow row = points_row({.points = {point(0, 0, 10)}, .multiplied_by = "gap"});
    const std::vector<RuleRow> rows = {row, made_row("gap", gap)};
    const auto with = [&](double axis_cd, bool beam) {
        Study study = lit_in_the_open(lambert(axis_cd));
        if (beam)
            add_lamp(study, "beam", LampFunction::dipped_beam, plate({0, -130, 0}, 100, 40));
        return check_study(asking(std::move(study), "points", rows));
    };
    CHECK(answer(with(15, true)).outcome == Outcome::met);
    const Findings low = with(14, true);
    CHECK(answer(low).outcome == Outcome::not_met);
    CHECK(in_candelas(verdict(low).light->needed) == Approx(15));
    CHECK(verdict(low).light->multiplier.most == 1.5);
    REQUIRE(verdict(low).measured.size() == 1);
    CHECK(verdict(low).measured[0].figure == Approx(80));
    CHECK(verdict(low).measured[0].note.find("row `gap` (x 1 from 100 mm on, x 1.5 from 75 mm on, "
                                             "x 2.5 from 0 mm on); from memory") == 0);
    // No beam in the study: anything from 1 to 2.5 times.
    CHECK(answer(with(9, false)).outcome == Outcome::not_met);
    CHECK(answer(with(25, false)).outcome == Outcome::met);
    const Findings open = with(24, false);
    CHECK(answer(open).outcome == Outcome::undecided);
    CHECK(verdict(open).because == Because::multiplier_not_known);
    CHECK(verdict(open).measured.empty());
}

TEST_CASE("a hidden lamp's proof is estimated by the light that its approval asks for",
          "[judgement]")
{
    const auto estimated = [](double axis_cd) {
        RuleRow free = made_row("free", NoObstacle{}, 0, 45, 0, 0);
        free.proof = ProofOfLight{"light of approval", "all"};
        Study study = asking(lit_behind_knife_edge(lambert(axis_cd)), "free", {free});
        RuleTable light;
        light.name = "light of approval";
        light.rows = {made_row("field", at_least_cd(0.3), 0, 45, 0, 0),
                      points_row({.points = {point(0, 0, 3), point(45, 0, 1.4)}})};
        light.rules = {
            {.id = "all", .title = "", .combine = Combine::all_of, .parts = {"field", "points"}}};
        study.tables.push_back(light);
        return check_study(study);
    };
    // 3 cos 45 x 2/3 = 1.41421 cd is enough of 1.4; of 2.9 cd it would be 1.36707.
    const Findings enough = estimated(3);
    CHECK(answer(enough).outcome == Outcome::proof_due);
    REQUIRE(answer(enough).rows.size() == 3);
    CHECK(answer(enough).rows[1].proof_from == "light of approval");
    CHECK(!verdict(enough).blockers.empty());
    CHECK(verdict(enough, 1).blockers.empty()); // told once
    CHECK(!verdict(enough, 1).uncovered.empty());
    REQUIRE(verdict(enough).estimate);
    CHECK(verdict(enough).estimate->suffices == true);
    // 2.9 cd on the axis are less than the approval asks of the whole lamp.
    const Findings less = estimated(2.9);
    CHECK(answer(less).outcome == Outcome::proof_due);
    REQUIRE(verdict(less).estimate);
    CHECK(verdict(less).estimate->suffices == false);
    CHECK(verdict(less).estimate->row == "points");
    CHECK(answer(less).deciding->row == 0);
}

TEST_CASE("the proof of rows that ask for area is estimated like that of obstacles", "[judgement]")
{
    // At H 45 two thirds of 60 x 40 cos 45 = 1131.37 mm2 are in view.
    RuleRow area = made_row("area", LeastArea{square_millimetres(1100), true}, 0, 45, 0, 0);
    area.proof = ProofOfLight{"light of approval", "field"};
    Study study = asking(lit_behind_knife_edge(lambert(3)), "area", {area});
    RuleTable light;
    light.name = "light of approval";
    light.rows = {made_row("field", at_least_cd(1.4), 0, 45, 0, 0)};
    RuleRow another = made_row("another", at_least_cd(99), 0, 45, 0, 0);
    another.functions = {LampFunction::stop};
    light.rows.push_back(another);
    light.rules = {
        {.id = "all", .title = "", .combine = Combine::all_of, .parts = {"field", "another"}}};
    study.tables.push_back(light);
    const Findings enough = check_study(study);
    CHECK(verdict(enough).because == Because::proof_to_be_agreed);
    REQUIRE(verdict(enough).estimate);
    CHECK(verdict(enough).estimate->suffices == true);
    study.tables.back().rows[0].criterion = at_least_cd(1.43);
    CHECK(verdict(check_study(study)).estimate->suffices == false);
    // What the proof asks of lamps with another function has no place here.
    study.tables[study.checks.front().table].rows[0].proof->rule = "all";
    CHECK(answer(check_study(study)).rows.size() == 2);
}
