#include "remedy/moved_lamp.h"

#include "judgement/check_study.h"
#include "judgement/made_rules.h"
#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

MoveLampTask shifts_only()
{
    MoveLampTask task;
    task.limits = {MoveLimits{-20, 20}, {-20, 20}, {-20, 20}, {0, 0}, {0, 0}};
    return task;
}

/// 60 x 40 lens, an edge at y = 50 that is 40 mm ahead hides what is outboard. Of 1250 mm2 asked at
/// (45, 0) it shows (50 - 40 + 30) * 40 * cos 45 = 1131.4.
Study behind_edge()
{
    Study study = lamp_behind(plate(Point::Zero(), 60, 40), {wall(40, 50, 500, -300, 300)});
    study = asking(std::move(study), "outboard",
                   {made_row("outboard", LeastArea{square_millimetres(1250)}, 45, 45, 0, 0)});
    study.vehicle.median = millimetres(-700);
    return study;
}

/// How much nearer to the edge, or farther inboard, for 1250 mm2.
const double shift_needed_mm = 1250 / (40 * cos(degrees(45))) - 40;

const WayAnswer& answer_of(const MovedLampAnswer& answer, MoveWay way, bool positive)
{
    return *std::find_if(answer.ways.begin(), answer.ways.end(), [&](const WayAnswer& a) {
        return a.way == way && a.positive == positive;
    });
}

} // namespace

TEST_CASE("past an edge the shift needed is that of the closed form, forward and inboard",
          "[remedy]")
{
    const MovedLampAnswer answer = find_moved_lamp(behind_edge(), shifts_only(), {});
    CHECK_FALSE(answer.met_as_drawn);
    for (const auto& [way, positive] :
         {std::pair(MoveWay::forward, true), {MoveWay::outboard, false}}) {
        const auto least = answer_of(answer, way, positive).least;
        REQUIRE(least);
        CHECK(std::abs(*least) >= shift_needed_mm - 1e-6);
        CHECK(std::abs(*least) <= shift_needed_mm + shift_accuracy_mm);
    }
    CHECK_FALSE(answer_of(answer, MoveWay::up, true).least);
    CHECK_FALSE(answer_of(answer, MoveWay::forward, false).least);
}

TEST_CASE("the least move found goes forward and inboard at once", "[remedy]")
{
    const MovedLampAnswer answer = find_moved_lamp(behind_edge(), shifts_only(), {});
    REQUIRE(answer.least);
    CHECK(answer.confirmed == std::vector{Outcome::met});
    // Both add up, so the shortest of all shifts is as long as a square's side to its diagonal.
    const double least = shift_needed_mm / std::sqrt(2.0);
    CHECK(in_mm(answer.farthest) >= least - 1e-6);
    CHECK(in_mm(answer.farthest) <= least + 0.15);
    CHECK((*answer.least)[MoveWay::forward] == Approx(shift_needed_mm / 2).margin(0.3));
    CHECK((*answer.least)[MoveWay::outboard] == Approx(-shift_needed_mm / 2).margin(0.3));
}

TEST_CASE("a study with the lamp moved so is met, and with a little less it is not", "[remedy]")
{
    const Study study = behind_edge();
    const MovedLampAnswer answer = find_moved_lamp(study, shifts_only(), {});
    REQUIRE(answer.least);
    const MovableLamp lamp(study, answer.lamp);
    CHECK(check_study(with_moved_lamp(study, lamp, *answer.least)).checks.front().outcome ==
          Outcome::met);
    const double back = 1 - 2 * shift_accuracy_mm / in_mm(answer.farthest);
    CHECK(check_study(with_moved_lamp(study, lamp, back * *answer.least)).checks.front().outcome ==
          Outcome::not_met);
}

TEST_CASE("a field that shrinks below a height lets a lamp pass lower down, past where it fails",
          "[remedy]")
{
    // A sill 200 mm ahead hides the lamp's foot from 15 degrees down. Below 790 mm only 5 degrees
    // down are asked, and there it hides nothing.
    Study study = lamp_behind(plate(Point::Zero(), 60, 40), {wall(200, -500, 500, -300, -70)});
    RuleRow row = made_row("low", LeastArea{square_millimetres(2200)}, 0, 0, -15, 15);
    row.relaxations.push_back({{{.quantity = Measured::axis_height, .below = millimetres(790)}},
                               {{rectangle(0, 0, -5, 15)}},
                               row.citation});
    study = asking(std::move(study), "low", {row});
    study.vehicle.median = millimetres(-700);
    const MovedLampAnswer answer = find_moved_lamp(study, shifts_only(), {});
    const auto down = answer_of(answer, MoveWay::up, false).least;
    REQUIRE(down);
    CHECK(*down < -10);
    CHECK(*down >= -10 - 2 * shift_accuracy_mm);
    // Upward the foot comes free: of 40 mm 200 tan 15 - 50 - s are hidden.
    const auto up = answer_of(answer, MoveWay::up, true).least;
    REQUIRE(up);
    const double visible = 2200 / (60 * cos(degrees(15)));
    CHECK(*up == Approx(visible - (40 - (200 * tan(degrees(15)) - 50))).margin(shift_accuracy_mm));
}

TEST_CASE("turning outboard shows more of a lens there", "[remedy]")
{
    // Without an edge: 900 mm2 of 60 x 40 at (80, 0) need 2400 cos(80 - t).
    Study study = lamp_alone(plate(Point::Zero(), 60, 40));
    study = asking(std::move(study), "aside",
                   {made_row("aside", LeastArea{square_millimetres(600)}, 80, 80, 0, 0)});
    study.vehicle.median = millimetres(-700);
    MoveLampTask task;
    task.limits = {MoveLimits{0, 0}, {0, 0}, {0, 0}, {-10, 10}, {0, 0}};
    const MovedLampAnswer answer = find_moved_lamp(study, task, {});
    const auto turn = answer_of(answer, MoveWay::turn, true).least;
    REQUIRE(turn);
    // cos(75.522) is a quarter.
    CHECK(*turn == Approx(80 - 75.5225).margin(turn_accuracy_deg));
    CHECK_FALSE(answer_of(answer, MoveWay::turn, false).least);
}

TEST_CASE("what moves with a lamp goes with it", "[remedy]")
{
    Study study = behind_edge();
    study.surfaces[SurfaceId{1}].moves_with = LampId{0};
    // The edge comes along: no shift helps.
    const MovedLampAnswer answer = find_moved_lamp(study, shifts_only(), {});
    CHECK(answer.surfaces.size() == 2);
    CHECK_FALSE(answer.least);
    for (const WayAnswer& way : answer.ways)
        CHECK_FALSE(way.least);
}

TEST_CASE("a lamp that meets its checks as drawn stays where it is", "[remedy]")
{
    Study study = behind_edge();
    std::get<LeastArea>(study.tables.front().rows.front().criterion).area =
        square_millimetres(1000);
    CHECK(find_moved_lamp(study, shifts_only(), {}).met_as_drawn);
}

TEST_CASE("the map of what passes has its border where the closed form has it", "[remedy]")
{
    const MoveMap map = move_map(behind_edge(), shifts_only(), {});
    REQUIRE(map.answers.size() == map.across.size() * map.up.size());
    for (std::size_t j = 0; j < map.up.size(); ++j)
        for (std::size_t i = 0; i < map.across.size(); ++i) {
            // Forward across, outboard up; the lamp is behind the edge by up to 40 mm.
            const double gain = map.across[i] - map.up[j];
            if (std::abs(gain - shift_needed_mm) < 0.2)
                continue;
            INFO("forward " << map.across[i] << ", outboard " << map.up[j]);
            CHECK((map.answers[j * map.across.size() + i].outcome == Outcome::met) ==
                  (gain > shift_needed_mm));
        }
}

TEST_CASE("on the other side outboard is the other way", "[remedy]")
{
    Study study = behind_edge();
    const MovableLamp left(study, LampId{0});
    study.lamps[LampId{0}].side = Side::right;
    const MovableLamp right(study, LampId{0});
    LampMove move;
    move[MoveWay::outboard] = 3;
    CHECK(left.placement(move)(Point(0, 0, 0)).y() == Approx(3));
    CHECK(right.placement(move)(Point(0, 0, 0)).y() == Approx(-3));
    LampMove turn;
    turn[MoveWay::turn] = 90;
    CHECK(left.placement(turn)(Direction::x()).vector().y() == Approx(1));
    CHECK(right.placement(turn)(Direction::x()).vector().y() == Approx(-1));
    LampMove tilt;
    tilt[MoveWay::tilt] = 90;
    CHECK(left.placement(tilt)(Direction::x()).vector().z() == Approx(1));
    CHECK(right.placement(tilt)(Direction::x()).vector().z() == Approx(1));
    CHECK(in_mm(left.farthest(move)) == Approx(3));
}
