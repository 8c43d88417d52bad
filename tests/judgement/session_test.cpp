#include "judgement/session.h"

#include "judgement/check_study.h"
#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

RuleRow area_row(const std::string& id, FieldRectangle field, double mm2)
{
    RuleRow row;
    row.id = id;
    row.title = id;
    row.citation = {Provenance::memory, "invented for this test", ""};
    row.field = {{field}};
    row.criterion = LeastArea{square_millimetres(mm2)};
    return row;
}

FieldRectangle rectangle(double h0, double h1, double v0, double v1)
{
    return {degrees(h0), degrees(h1), degrees(v0), degrees(v1)};
}

/// Asks every lamp of the study for all rows together.
Study asking(Study study, std::vector<RuleRow> rows)
{
    RuleTable table;
    table.name = "test";
    table.regulation = "invented for this test";
    Rule all{.id = "all", .title = "all rows", .combine = Combine::all_of, .parts = {}};
    for (const RuleRow& row : rows)
        all.parts.push_back(row.id);
    table.rows = std::move(rows);
    table.rules.push_back(std::move(all));
    study.tables.push_back(std::move(table));
    study.checks.push_back({"ask", 0, "all", study.lamps.ids()});
    return study;
}

/// 60 x 40 lens, knife edge for y > 50 at 40 ahead: 1250 mm2 end at 42.9852 outboard.
Study behind_knife_edge()
{
    return lamp_behind(plate(Point::Zero(), 60, 40), {wall(40, 50, 500, -300, 300)});
}

void add_lamp(Study& study, const std::string& name, TriangleMesh lit)
{
    const SurfaceId lens = study.surfaces.add(Surface{.name = name + " lens",
                                                      .role = Role::emitting,
                                                      .mirror = MirrorRule::no,
                                                      .mesh = std::move(lit),
                                                      .clear_for = {}});
    Lamp lamp;
    lamp.name = name;
    lamp.side = Side::left;
    lamp.emits = {lens};
    study.lamps.add(std::move(lamp));
}

const LampVerdict& only_verdict(const Findings& findings)
{
    return findings.checks.front().rows.front().lamps.front();
}

} // namespace

TEST_CASE("a field that the knife edge spares is met, with the margin on paper", "[judgement]")
{
    const Findings f = check_study(
        asking(behind_knife_edge(), {area_row("to-40", rectangle(-45, 40, 0, 0), 1250)}));
    const CheckFindings& check = f.checks.front();
    CHECK(check.outcome == Outcome::met);
    // 2400 cos 40 f(40) = 1422.88, f(40) = (50 - 40 tan 40 + 30) / 60
    CHECK(in_mm2(check.deciding_verdict().margin) == Approx(172.882).margin(2e-3));
    const LampLook& look = f.looks.front();
    CHECK(look.toward[check.deciding_verdict().directions[check.deciding_verdict().worst].at].h ==
          degrees(40));
}

TEST_CASE("a field beyond the edge is not met, and the worst direction is exactly known",
          "[judgement]")
{
    const Findings f = check_study(
        asking(behind_knife_edge(), {area_row("to-45", rectangle(-45, 45, 0, 0), 1250)}));
    const LampVerdict& v = only_verdict(f);
    CHECK(v.outcome == Outcome::not_met);
    CHECK(v.because == Because::of_the_figures);
    CHECK(in_mm2(v.least_visible) == Approx(1131.371).margin(2e-3));
    CHECK(f.looks[v.look].exact[v.directions[v.worst].at].has_value());
    // 43, 44 and 45 of 91 whole degrees fail: 1250 mm2 end at 42.9852.
    CHECK(v.coverage.directions == 91);
    CHECK(v.coverage.directions_met == 88);
    REQUIRE(v.uncovered.size() == 1);
    CHECK(v.uncovered[0].h_least == degrees(43));
    CHECK(v.uncovered[0].h_most == degrees(45));
    CHECK(v.uncovered[0].directions == 3);
}

TEST_CASE("the surface in the way is named with the area it takes", "[judgement]")
{
    const Findings f = check_study(
        asking(behind_knife_edge(), {area_row("to-45", rectangle(-45, 45, 0, 0), 1250)}));
    const LampVerdict& v = only_verdict(f);
    REQUIRE(v.blockers.size() == 1);
    CHECK(v.blockers[0].surface == "obstacle 1");
    // A third of the lens at 45 degrees; corners stand for a third of their cells.
    CHECK(in_mm2(v.blockers[0].alone_at_worst) == Approx(2400 * cos(degrees(45)) / 3).margin(2));
    CHECK(in_mm2(v.blockers[0].jointly_at_worst) == 0);
    CHECK(v.blockers[0].mean_alone > Area{});
}

TEST_CASE("a lens too small for its field is told apart from one that is hidden", "[judgement]")
{
    // 2400 cos 80 = 417 with nothing in the way.
    const Findings f = check_study(asking(lamp_alone(plate(Point::Zero(), 60, 40)),
                                          {area_row("to-80", rectangle(-45, 80, -15, 15), 1250)}));
    CHECK(only_verdict(f).outcome == Outcome::not_met);
    CHECK(only_verdict(f).because == Because::lens_too_small);
    CHECK(only_verdict(f).blockers.empty());
}

TEST_CASE("corners of the field are always among the directions, coverage counts both ways",
          "[judgement]")
{
    Study study = asking(lamp_alone(plate(Point::Zero(), 60, 40)),
                         {area_row("field", rectangle(-45, 80, -15, 15), 100)});
    study.sampling.step = degrees(7);
    const Findings f = check_study(study);
    const LampVerdict& v = only_verdict(f);
    const auto& toward = f.looks[v.look].toward;
    for (const double h : {-45.0, 80.0})
        for (const double b : {-15.0, 15.0})
            CHECK(std::find(toward.begin(), toward.end(), Bearing{degrees(h), degrees(b)}) !=
                  toward.end());
    CHECK(in_steradians(v.coverage.solid_angle) == Approx(1.129311).margin(1e-6));
    CHECK(in_steradians(v.coverage.solid_angle_met) == Approx(1.129311).margin(1e-6));
}

TEST_CASE("two lamps that meet one row each do not meet a rule that one must answer alone",
          "[judgement]")
{
    // One lens looks ahead and is small at 60 outboard, the other looks 60 outboard.
    Study study = lamp_alone(plate(Point::Zero(), 60, 40));
    add_lamp(study, "side", moved(turned(plate(Point::Zero(), 60, 40), degrees(60)), {0, 300, 0}));
    const std::vector rows = {area_row("ahead", rectangle(-30, 0, 0, 0), 1500),
                              area_row("outboard", rectangle(60, 75, 0, 0), 1500)};
    CHECK(check_study(asking(study, rows)).checks.front().outcome == Outcome::not_met);

    add_lamp(study, "large",
             moved(turned(plate(Point::Zero(), 200, 200), degrees(20)), {0, 900, 0}));
    const Findings f = check_study(asking(study, rows));
    CHECK(f.checks.front().outcome == Outcome::met);
    CHECK(f.looks[f.checks.front().deciding_verdict().look].name == "large");
}

TEST_CASE("where each lamp must meet the row, one that fails is enough", "[judgement]")
{
    Study study = lamp_alone(plate(Point::Zero(), 60, 40));
    add_lamp(study, "small", moved(plate(Point::Zero(), 20, 20), {0, 300, 0}));
    RuleRow row = area_row("ahead", rectangle(0, 0, 0, 0), 1500);
    row.answered_by = AnsweredBy::each;
    CHECK(check_study(asking(study, {row})).checks.front().outcome == Outcome::not_met);
    row.answered_by = AnsweredBy::one_alone;
    CHECK(check_study(asking(study, {row})).checks.front().outcome == Outcome::met);
}

TEST_CASE("a union adds the areas of lamps of one axis, and only there", "[judgement]")
{
    Study study = lamp_alone(plate(Point::Zero(), 40, 40));
    add_lamp(study, "second", moved(plate(Point::Zero(), 40, 40), {0, 300, 0}));
    RuleRow row = area_row("ahead", rectangle(0, 0, 0, 0), 3000);
    row.answered_by = AnsweredBy::together;
    const Findings f = check_study(asking(study, {row}));
    CHECK(f.checks.front().outcome == Outcome::met);
    CHECK(f.checks.front().deciding->together);
    CHECK(in_mm2(f.checks.front().deciding_verdict().least_visible) == Approx(3200));
    const LampLook& both = f.looks[f.checks.front().deciding_verdict().look];
    CHECK(both.name == "indicator + second");
    REQUIRE(both.standings.size() == 2);
    CHECK(study.lamps[both.standings[0].lamp].name == "indicator");
    CHECK(study.lamps[both.standings[1].lamp].name == "second");

    Study turned_axis = study;
    turned_axis.lamps[LampId{1}].axis = Direction::along({1, 0.2, 0});
    CHECK_THROWS_AS(check_study(asking(turned_axis, {row})), InputError);

    // One on each side: no side has 3000 mm2.
    study.lamps[LampId{1}].side = Side::right;
    CHECK(check_study(asking(study, {row})).checks.front().outcome == Outcome::not_met);
}

TEST_CASE("a look tells how far the lamp's own axis is turned from the rule's", "[judgement]")
{
    // Drawn on the left, facing along +x, where left is +y: outboard of a left lamp.
    Study study = lamp_alone(moved(plate(Point::Zero(), 40, 40), {0, 600, 0}));
    const RuleRow row = area_row("ahead", rectangle(0, 0, 0, 0), 100);
    CHECK(check_study(asking(study, {row})).looks[0].axis_turned == Angle());
    study.lamps[LampId{0}].axis = Direction::along({1, 1, 0.2});
    CHECK(in_degrees(check_study(asking(study, {row})).looks[0].axis_turned) == Approx(45));
}

TEST_CASE("lamps on both sides do not answer for each other", "[judgement]")
{
    Study study = lamp_behind(moved(plate(Point::Zero(), 60, 40), {0, 600, 0}),
                              {wall(40, -700, -500, -100, 100)});
    add_lamp(study, "right one", moved(plate(Point::Zero(), 60, 40), {0, -600, 0}));
    study.lamps[LampId{1}].side = Side::right;
    const RuleRow row = area_row("ahead", rectangle(0, 0, 0, 0), 1000);
    const Findings f = check_study(asking(study, {row}));
    CHECK(f.checks.front().outcome == Outcome::not_met);
    CHECK(f.looks[f.checks.front().deciding_verdict().look].name == "right one");
}

TEST_CASE("lamps that answer together do so on either side", "[judgement]")
{
    Study study = lamp_behind(moved(plate(Point::Zero(), 60, 40), {0, 600, 0}),
                              {wall(40, -700, -500, -100, 100)});
    study.surfaces[SurfaceId{0}].mirror = MirrorRule::yes;
    study.lamps[LampId{0}].paired = true;
    RuleRow row = area_row("ahead", rectangle(0, 0, 0, 0), 1000);
    row.answered_by = AnsweredBy::together;
    CHECK(check_study(asking(study, {row})).checks.front().outcome == Outcome::not_met);
}

TEST_CASE("a lamp that a row passes over does not answer for one that it speaks to", "[judgement]")
{
    Study study = lamp_alone(plate(Point::Zero(), 45, 40));
    add_lamp(study, "position", moved(plate(Point::Zero(), 60, 40), {0, 300, 0}));
    study.lamps[LampId{1}].function = LampFunction::front_position;
    RuleRow axis = area_row("axis", rectangle(0, 0, 0, 0), 2200);
    axis.functions = {LampFunction::front_indicator};
    const RuleRow field = area_row("field", rectangle(-10, 10, 0, 0), 1250);
    CHECK(check_study(asking(study, {axis, field})).checks.front().outcome == Outcome::not_met);
}

TEST_CASE("a lit face that the file repeats shines once", "[judgement]")
{
    const TriangleMesh once = plate(Point::Zero(), 40, 30);
    const Findings f = check_study(asking(lamp_alone(joined(once, turned_over(once))),
                                          {area_row("ahead", rectangle(0, 0, 0, 0), 1250)}));
    CHECK(only_verdict(f).outcome == Outcome::not_met);
    CHECK(in_mm2(only_verdict(f).least_visible) == Approx(1200));
}

TEST_CASE("an area equal to the threshold meets it wherever the lamp stands", "[judgement]")
{
    for (const Vector& away : {Vector(0, 0, 0), Vector(711.3, 302.7, -33.1)})
        CHECK(check_study(asking(lamp_alone(moved(plate(Point::Zero(), 55, 40), away)),
                                 {area_row("ahead", rectangle(0, 0, 0, 0), 2200)}))
                  .checks.front()
                  .outcome == Outcome::met);
}

TEST_CASE("sectors with no field between them are told apart where they fail", "[judgement]")
{
    RuleRow row = area_row("sectors", rectangle(-45, -30, 0, 0), 5000);
    row.field.rectangles.push_back(rectangle(30, 45, 0, 0));
    const Findings f = check_study(asking(lamp_alone(plate(Point::Zero(), 60, 40)), {row}));
    REQUIRE(only_verdict(f).uncovered.size() == 2);
    CHECK(only_verdict(f).uncovered[0].h_most == degrees(-30));
    CHECK(only_verdict(f).uncovered[1].h_least == degrees(30));
}

TEST_CASE("a low lamp is spared the lower part of the field", "[judgement]")
{
    // A bumper hides the lens from below 10 degrees down.
    const Study base = lamp_behind(plate(Point::Zero(), 60, 40), {wall(200, -900, 900, -300, -55)});
    RuleRow row = area_row("field", rectangle(0, 0, -15, 15), 1250);
    row.relaxations.push_back({{Condition{Measured::axis_height, {}, millimetres(750)}},
                               {{rectangle(0, 0, -5, 15)}},
                               {Provenance::memory, "invented for this test", ""}});
    const Findings high = check_study(asking(base, {row})); // centre 800 above the ground
    CHECK(only_verdict(high).outcome == Outcome::not_met);
    CHECK_FALSE(only_verdict(high).relaxation);

    Study low = base;
    low.grounds.front().ground.on.z() = -700;
    CHECK(only_verdict(check_study(asking(low, {row}))).outcome == Outcome::met);
    CHECK(only_verdict(check_study(asking(low, {row}))).relaxation == 0U);
}

TEST_CASE("a row for other functions or other widths is not applicable", "[judgement]")
{
    Study study = lamp_alone(plate(Point::Zero(), 60, 40));
    study.vehicle.overall_width = millimetres(1850);
    RuleRow stop = area_row("stop", rectangle(0, 0, 0, 0), 1e6);
    stop.functions = {LampFunction::stop};
    RuleRow wide = area_row("wide", rectangle(0, 0, 0, 0), 1e6);
    wide.when = {Condition{Measured::overall_width, millimetres(2032), {}}};
    const Findings neither = check_study(asking(study, {stop, wide}));
    CHECK(neither.checks.front().outcome == Outcome::not_applicable);
    CHECK(neither.checks.front().rows[0].lamps[0].because == Because::another_function);
    CHECK(neither.checks.front().rows[1].lamps[0].because == Because::condition_does_not_hold);

    const RuleRow narrow = area_row("narrow", rectangle(0, 0, 0, 0), 2200);
    CHECK(check_study(asking(study, {stop, wide, narrow})).checks.front().outcome == Outcome::met);
}

TEST_CASE("a twin is looked at where something exists on one side only", "[judgement]")
{
    // The plate hides only the right lamp: it stands once, right of the median.
    Study study = lamp_behind(moved(plate(Point::Zero(), 60, 40), {0, 600, 0}),
                              {wall(40, -700, -500, -100, 100)}, MirrorRule::no);
    study.surfaces[SurfaceId{0}].mirror = MirrorRule::yes;
    study.lamps[LampId{0}].paired = true;
    const RuleRow row = area_row("ahead", rectangle(0, 0, 0, 0), 1000);
    const Findings f = check_study(asking(study, {row}));
    REQUIRE(f.checks.front().rows.front().lamps.size() == 2);
    CHECK(f.checks.front().rows.front().lamps[0].outcome == Outcome::met);
    CHECK(f.checks.front().rows.front().lamps[1].outcome == Outcome::not_met);
    CHECK(f.checks.front().outcome == Outcome::not_met); // each side must have its answer
    for (const LampVerdict& v : f.checks.front().rows.front().lamps)
        CHECK(f.looks[v.look].standings.front().twin == f.looks[v.look].twin);

    study.surfaces[SurfaceId{1}].mirror = MirrorRule::yes;
    const Findings alike = check_study(asking(study, {row}));
    CHECK(alike.checks.front().rows.front().lamps.size() == 1);
    CHECK(alike.looks.front().twin_is_alike);
}

TEST_CASE("a session answers again after a surface was replaced or moved", "[judgement]")
{
    Session session(
        asking(behind_knife_edge(), {area_row("to-45", rectangle(-45, 45, 0, 0), 1250)}));
    const auto outcome = [&] {
        return session.check(session.all_checks(), degrees(1), {}).checks.front().outcome;
    };
    CHECK(outcome() == Outcome::not_met);
    // 1250 mm2 at 45 need an edge at least 4.195 further out: e = 40 + 60 (1250/1697.06) - 30.
    session.place(SurfaceId{1}, Placement::shift({0, 4.1, 0}));
    CHECK(outcome() == Outcome::not_met);
    session.place(SurfaceId{1}, Placement::shift({0, 4.3, 0}));
    CHECK(outcome() == Outcome::met);
    session.replace(SurfaceId{1}, wall(40, 45, 500, -300, 300));
    CHECK(outcome() == Outcome::not_met);
    session.place(LampId{0}, Placement::shift({0, -10, 0}));
    CHECK(outcome() == Outcome::met);
}

TEST_CASE("an area on the threshold is settled by the exact area", "[judgement]")
{
    // Exactly 1250 mm2 and a hair: bounds of sampled cells cannot tell, polygons can.
    const double edge = 40 + 60 * (1250.01 / (2400 * cos(degrees(45)))) - 30;
    const Study study = lamp_behind(plate(Point::Zero(), 60, 40), {wall(40, edge, 500, -300, 300)});
    const auto outcome = [&](double mm2) {
        return check_study(asking(study, {area_row("at-45", rectangle(45, 45, 0, 0), mm2)}))
            .checks.front()
            .outcome;
    };
    CHECK(outcome(1250) == Outcome::met);
    CHECK(outcome(1250.02) == Outcome::not_met);
}
