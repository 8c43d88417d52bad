// What is easily got wrong about lamp rules, one test each: it fails when the trap is fallen into.

#include "judgement/check_study.h"
#include "judgement/made_rules.h"
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

/// 60 x 40 lens, knife edge for y > 50 at 40 ahead: from atan(20/40) = 26.57 outboard on it hides.
Study behind_knife_edge()
{
    return lamp_behind(plate(Point::Zero(), 60, 40), {wall(40, 50, 500, -300, 300)});
}

const NoObstacle no_obstacle{};
LeastArea at_least(double mm2) { return {square_millimetres(mm2)}; }

} // namespace

TEST_CASE("any hidden part asks for photometric proof, however much area is in view",
          "[judgement][traps]")
{
    const Findings f = check_study(asking(behind_knife_edge(), "free",
                                          {made_row("free", no_obstacle, -45, 30, 0, 0),
                                           made_row("area", at_least(1250), -45, 30, 0, 0)}));
    CHECK(answer(f).outcome == Outcome::proof_due);
    const Findings area = check_study(
        asking(behind_knife_edge(), "area", {made_row("area", at_least(1250), -45, 30, 0, 0)}));
    CHECK(answer(area).outcome == Outcome::met);
    // At 30 degrees the edge's shadow has moved 40 tan 30 - 20 = 3.094 mm over the lens.
    CHECK(in_mm2(verdict(f).hidden) == Approx(3.0940 * 40 * cos(degrees(30))).epsilon(1e-4));
}

TEST_CASE(
    "one direction whose proof is due settles it, though others lie within the meshes' accuracy",
    "[judgement][traps]")
{
    // At 26.6 degrees the edge hides 0.03 mm of the lens, within 0.2 mm of mesh; at 40 more
    // than 13.
    Study study = behind_knife_edge();
    study.surfaces[SurfaceId{1}].chord.error = millimetres(0.2);
    const RuleRow row = made_row("free", no_obstacle, 26.6, 40, 0, 0);
    const Findings f = check_study(asking(study, "free", {row}));
    CHECK(verdict(f).directions.front().outcome == Outcome::undecided);
    CHECK(answer(f).outcome == Outcome::proof_due);
}

TEST_CASE("no obstacle is not seen: a lens turned away shows nothing and hides behind nothing",
          "[judgement][traps]")
{
    // Turned 50 degrees outboard, its cosine at 45 inboard is cos 95 < 0.
    const Findings f =
        check_study(asking(lamp_alone(turned(plate(Point::Zero(), 60, 40), degrees(50))), "free",
                           {made_row("free", no_obstacle, -45, 45, 0, 0)}));
    CHECK(answer(f).outcome == Outcome::not_met);
    CHECK(verdict(f).because == Because::shows_no_surface);
    CHECK(f.looks[0].toward[verdict(f).directions[verdict(f).worst].at].h < degrees(-39));
}

TEST_CASE("a choice that is not declared stays undecided, though one way passes",
          "[judgement][traps]")
{
    const std::vector<RuleRow> rows = {made_row("easy", at_least(100), -45, 45, 0, 0),
                                       made_row("hard", at_least(1e6), -45, 45, 0, 0)};
    const Rule choice{
        .id = "choice", .title = "", .combine = Combine::choose_one, .parts = {"easy", "hard"}};
    Study study = asking(lamp_alone(plate(Point::Zero(), 60, 40)), "choice", rows, {choice});
    const Findings open = check_study(study);
    CHECK(answer(open).outcome == Outcome::undecided);
    CHECK(answer(open).because == Because::option_not_declared);
    CHECK(verdict(open, 0).outcome == Outcome::met); // both ways are shown
    CHECK(verdict(open, 1).outcome == Outcome::not_met);
    study.checks.front().options = {"easy"};
    const Findings chosen = check_study(study);
    CHECK(answer(chosen).outcome == Outcome::met);
    CHECK(!answer(chosen).rows[0].not_chosen);
    CHECK(answer(chosen).rows[1].not_chosen);
    study.checks.front().options = {"hard"};
    CHECK(answer(check_study(study)).outcome == Outcome::not_met);
}

TEST_CASE("a choice is made for the whole field, not direction by direction", "[judgement][traps]")
{
    // Each way fails somewhere; in every single direction one of them would pass.
    const std::vector<RuleRow> rows = {made_row("left", at_least(2300), -45, 0, 0, 0),
                                       made_row("right", at_least(2300), 0, 45, 0, 0)};
    const Rule choice{
        .id = "choice", .title = "", .combine = Combine::choose_one, .parts = {"left", "right"}};
    const Findings f =
        check_study(asking(lamp_alone(plate(Point::Zero(), 60, 40)), "choice", rows, {choice}));
    CHECK(answer(f).outcome == Outcome::not_met);
}

TEST_CASE("a reduced field stands on the side marker's own result", "[judgement][traps]")
{
    RuleRow area = made_row("area", at_least(1250), -45, 30, 0, 0);
    area.functions = {LampFunction::front_indicator};
    RuleRow marker = made_row("marker", no_obstacle, -20, 20, 0, 0);
    marker.functions = {LampFunction::side_marker};
    marker.axis = ReferenceAxis::outboard;
    const Rule rest{.id = "rest",
                    .title = "",
                    .combine = Combine::all_of,
                    .parts = {"marker"},
                    .of_other_lamps = {LampFunction::side_marker}};
    const Rule reduced{
        .id = "reduced", .title = "", .combine = Combine::all_of, .parts = {"area", "rest"}};
    Study study = asking(behind_knife_edge(), "reduced", {area, marker}, {rest, reduced});

    const Findings without = check_study(study);
    CHECK(answer(without).outcome == Outcome::not_met);
    CHECK(answer(without).because == Because::no_such_lamp);

    add_lamp(study, "marker", LampFunction::side_marker,
             moved(turned(plate({200, 0, 0}, 60, 40), degrees(90)), {-300, 0, 0}));
    CHECK(answer(check_study(study)).outcome == Outcome::met);

    // Something before the marker and the whole answer hangs on its proof.
    Surface mirror;
    mirror.name = "door";
    mirror.role = Role::opaque;
    mirror.mesh = turned(wall(260, 310, 500, -300, 300), degrees(90));
    study.surfaces.add(std::move(mirror));
    const Findings hidden = check_study(study);
    CHECK(answer(hidden).outcome == Outcome::proof_due);
    CHECK(answer(hidden).deciding_row().row.id == "marker");
}

TEST_CASE("a low lamp's field has its notch below the horizontal only", "[judgement][traps]")
{
    RuleRow row = made_row("free", no_obstacle, -45, 80, -15, 15);
    row.relaxations = {{{{.quantity = Measured::h_plane_height, .below = millimetres(750)}},
                        {{rectangle(-45, 80, 0, 15), rectangle(-20, 80, -5, 0)}},
                        row.citation}};
    // Hides what is below 2 degrees down and more than 30 inboard (y < 0 here).
    const auto study_at = [&](double ground_z) {
        Study study =
            lamp_behind(plate(Point::Zero(), 10, 10), {wall(1000, -3000, -610, -600, -45)});
        study.grounds.front().ground.on.z() = ground_z;
        return asking(study, "free", {row});
    };
    const Findings low = check_study(study_at(-700));
    CHECK(verdict(low).relaxation.has_value());
    CHECK(answer(low).outcome == Outcome::met);
    const Findings high = check_study(study_at(-800));
    CHECK(!verdict(high).relaxation.has_value());
    CHECK(answer(high).outcome == Outcome::not_met); // wholly hidden there
    // On the horizontal 45 inboard still counts.
    Study wall_on_horizon =
        lamp_behind(plate(Point::Zero(), 10, 10), {wall(1000, -3000, -610, -600, 3)});
    wall_on_horizon.grounds.front().ground.on.z() = -700;
    CHECK(answer(check_study(asking(wall_on_horizon, "free", {row}))).outcome ==
          Outcome::proof_due);
}

TEST_CASE("the gap to the dipped beam gives the category", "[judgement][traps]")
{
    const GapToLamp gap{
        .to = {LampFunction::dipped_beam},
        .from = GapFrom::edge,
        .steps = {{millimetres(40), "1"}, {millimetres(20), "1a"}, {Length(), "1b"}}};
    Study study = asking(lamp_alone(plate(Point::Zero(), 60, 40)), "gap", {made_row("gap", gap)});
    CHECK(answer(check_study(study)).because == Because::of_the_figures);
    CHECK(verdict(check_study(study)).because == Because::not_in_study);
    // Edges at y = -30 and -55; 300 mm further back, which a projection does not see.
    add_lamp(study, "dipped", LampFunction::dipped_beam, plate({-300, -105, 0}, 100, 40));
    const Findings f = check_study(study);
    CHECK(answer(f).outcome == Outcome::met);
    CHECK(verdict(f).follows == "1a");
    CHECK(verdict(f).measured.front().figure == Approx(25));
    study.lamps[LampId{0}].category = "1";
    CHECK(answer(check_study(study)).outcome == Outcome::not_met);
    study.lamps[LampId{0}].category = "1b";
    CHECK(answer(check_study(study)).outcome == Outcome::met);
}

TEST_CASE("four heights of one lamp are four figures", "[judgement][traps]")
{
    // A plate of 100 mm and a small one above it; the declared centre is neither's.
    Study study = lamp_alone(joined(plate(Point::Zero(), 100, 100), plate({0, 0, 200}, 100, 20)));
    study.lamps[LampId{0}].centre = Point(0, 0, 30);
    const auto height_row = [](HeightOf of) {
        return made_row("height", HeightLimits{.of = of, .at_least = millimetres(1)});
    };
    const auto figure = [&](HeightOf of) {
        return verdict(check_study(asking(study, "height", {height_row(of)})))
            .measured.front()
            .figure;
    };
    CHECK(figure(HeightOf::apparent_surface) == Approx(750)); // its lowest point
    CHECK(figure(HeightOf::h_plane) == Approx(830));
    CHECK(figure(HeightOf::reference_axis) == Approx(830));
    // Centroid: (10000 x 800 + 2000 x 1000) / 12000.
    CHECK(figure(HeightOf::lamp_centre) == Approx(833.333).margin(1e-2));
    // An assumed centre is said to be assumed.
    study.lamps[LampId{0}].centre.reset();
    const Findings assumed = check_study(asking(study, "height", {height_row(HeightOf::h_plane)}));
    CHECK(verdict(assumed).measured.front().note.find("assumed") != std::string::npos);
}

TEST_CASE("height limits go by the lowest and the highest point", "[judgement][traps]")
{
    const auto outcome = [](double at_least, double at_most, double unavoidable) {
        HeightLimits limits{.at_least = millimetres(at_least), .at_most = millimetres(at_most)};
        if (unavoidable > 0)
            limits.unless_unavoidable = millimetres(unavoidable);
        return check_study(asking(lamp_alone(plate(Point::Zero(), 60, 40)), "height",
                                  {made_row("height", limits)}))
            .checks.front()
            .outcome;
    };
    // The plate stands from 780 to 820 above the ground.
    CHECK(outcome(780, 820, 0) == Outcome::met);
    CHECK(outcome(781, 820, 0) == Outcome::not_met);
    CHECK(outcome(780, 819, 0) == Outcome::not_met);
    CHECK(outcome(780, 819, 820) == Outcome::undecided); // only if it cannot be avoided
    CHECK(outcome(781, 819, 820) == Outcome::not_met);
}

TEST_CASE("each state of load has its own ground", "[judgement][traps]")
{
    Study study = lamp_alone(plate(Point::Zero(), 60, 40));
    study.grounds.push_back({"unladen", {.on = {0, 0, -850}}});
    RuleRow row =
        made_row("height", HeightLimits{.of = HeightOf::h_plane, .at_least = millimetres(1)});
    row.state = "unladen";
    Findings f = check_study(asking(study, "height", {row}));
    CHECK(verdict(f).measured.front().figure == Approx(850));
    row.state = "design"; // not known: the first stands in, and says so
    f = check_study(asking(study, "height", {row}));
    CHECK(verdict(f).measured.front().figure == Approx(800));
    CHECK(f.looks[verdict(f).look].state_stands_in);
    CHECK(verdict(f).measured.front().note.find("stands in") != std::string::npos);
}

TEST_CASE("the share of a field by solid angle weighs by cos V, the share by directions does not",
          "[judgement][traps]")
{
    // A roof hides everything above 30 degrees up: a third of the lines, less of the sphere.
    Study study = lamp_behind(plate(Point::Zero(), 10, 10), {wall(100, -9e4, 9e4, 68, 9e4)});
    study.sampling.step = degrees(5);
    const Findings f =
        check_study(asking(study, "area", {made_row("area", at_least(10), -10, 10, -80, 80)}));
    const Coverage& c = verdict(f).coverage;
    const double by_angle = c.solid_angle_met / c.solid_angle;
    const double by_count = double(c.directions_met) / double(c.directions);
    CHECK(by_angle > by_count + 0.05);
}

TEST_CASE("lines of sight are parallel: a wall three metres away hides by its edge alone",
          "[judgement][traps]")
{
    // Edge at y = 50, 3 m ahead. From infinity at H the shadow covers 50 - 3000 tan H and beyond:
    // at 1 degree it stands at -2.365, so 32.365 of 60 mm are hidden; an eye at 3 m would not say
    // so.
    const Findings f = check_study(
        asking(lamp_behind(plate(Point::Zero(), 60, 40), {wall(3000, 50, 5000, -900, 900)}), "area",
               {made_row("area", at_least(1), 1, 1, 0, 0)}));
    CHECK(in_mm2(verdict(f).least_visible) ==
          Approx((50 - 3000 * tan(degrees(1)) + 30) * 40 * cos(degrees(1))).epsilon(1e-5));
}

TEST_CASE("parts approved with the lamp are ignored or counted as the row says",
          "[judgement][traps]")
{
    Study study = behind_knife_edge();
    study.lamps[LampId{0}].approved_with = {SurfaceId{1}}; // the edge is the lamp's own bezel
    RuleRow free = made_row("free", no_obstacle, 40, 40, 0, 0);
    CHECK(answer(check_study(asking(study, "free", {free}))).outcome == Outcome::met);
    free.approved_parts = ApprovedParts::counted;
    CHECK(answer(check_study(asking(study, "free", {free}))).outcome == Outcome::proof_due);
    // 2400 cos 40 x (50 - 40 tan 40 + 30) / 60 with it, 2400 cos 40 without.
    RuleRow area = made_row("area", at_least(1), 40, 40, 0, 0);
    Findings f = check_study(asking(study, "area", {area}));
    CHECK(in_mm2(verdict(f).least_visible) == Approx(1422.882).margin(0.01));
    area.approved_parts = ApprovedParts::ignored;
    f = check_study(asking(study, "area", {area}));
    CHECK(in_mm2(verdict(f).least_visible) == Approx(2400 * cos(degrees(40))).margin(0.01));
}

TEST_CASE("an area met with part of the lamp hidden leaves its proof to be agreed",
          "[judgement][traps]")
{
    const LeastArea with_proof{square_millimetres(1250), true};
    const Findings f = check_study(
        asking(behind_knife_edge(), "area", {made_row("area", with_proof, -45, 40, 0, 0)}));
    CHECK(answer(f).outcome == Outcome::proof_due);
    CHECK(verdict(f).because == Because::proof_to_be_agreed);
    const Findings clear = check_study(
        asking(behind_knife_edge(), "area", {made_row("area", with_proof, -45, 20, 0, 0)}));
    CHECK(answer(clear).outcome == Outcome::met);
}

TEST_CASE("a strip as thin as a hair along the rim is touching, not hiding", "[judgement][traps]")
{
    // An edge that stands 0.0005 mm over the lens's own: hidden 0.02 mm2, tolerated 0.2 mm2.
    Study study = lamp_behind(plate(Point::Zero(), 60, 40), {wall(10, 29.9995, 500, -300, 300)});
    const RuleRow row = made_row("free", no_obstacle, 0, 0, 0, 0);
    const Findings touching = check_study(asking(study, "free", {row}));
    CHECK(answer(touching).outcome == Outcome::met);
    CHECK(in_mm2(verdict(touching).tolerated) == Approx(0.2).epsilon(1e-3));
    study.sampling.hairline = millimetres(0.00001);
    CHECK(answer(check_study(asking(study, "free", {row}))).outcome == Outcome::proof_due);
}

TEST_CASE("what is hidden within the meshes' accuracy is undecided", "[judgement][traps]")
{
    // 0.1 mm of the lens is hidden; the wall's mesh may be off by 0.2 mm.
    Study study = lamp_behind(plate(Point::Zero(), 60, 40), {wall(10, 29.9, 500, -300, 300)});
    const RuleRow row = made_row("free", no_obstacle, 0, 0, 0, 0);
    CHECK(answer(check_study(asking(study, "free", {row}))).outcome == Outcome::proof_due);
    study.surfaces[SurfaceId{1}].chord.error = millimetres(0.2);
    const Findings f = check_study(asking(study, "free", {row}));
    CHECK(answer(f).outcome == Outcome::undecided);
    CHECK(verdict(f).because == Because::mesh_accuracy);
    // The same for an area that holds by less than the meshes are worth.
    const RuleRow area = made_row("area", at_least(2395), 0, 0, 0, 0);
    const Findings g = check_study(asking(study, "area", {area}));
    CHECK(answer(g).outcome == Outcome::undecided);
    CHECK(verdict(g).because == Because::mesh_accuracy);
}
