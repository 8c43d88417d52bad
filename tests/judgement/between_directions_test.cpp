#include "judgement/check_study.h"
#include "judgement/made_rules.h"
#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

const LampVerdict& verdict(const Findings& f)
{
    return f.checks.front().rows.front().lamps.front();
}

LeastArea at_least(double mm2) { return {square_millimetres(mm2)}; }

/// 60 x 40 lens, knife edge for y > 50 at 40 ahead: 1250 mm2 end at 42.9852 outboard.
Study behind_knife_edge()
{
    return lamp_behind(plate(Point::Zero(), 60, 40), {wall(40, 50, 500, -300, 300)});
}

} // namespace

TEST_CASE("the boundary between pass and fail is found to a tenth of a degree, within what it says",
          "[judgement]")
{
    for (const double step : {1.0, 5.0}) {
        Study study = behind_knife_edge();
        study.sampling.step = degrees(step);
        const Findings f =
            check_study(asking(study, "area", {made_row("area", at_least(1250), -45, 45, 0, 0)}));
        REQUIRE(verdict(f).crossings.size() == 1);
        const Crossing& c = verdict(f).crossings.front();
        // Closed form: 2400 cos H (80 - 40 tan H) / 60 = 1250 at H = 42.9852.
        const double middle = in_degrees(c.met.h + c.unmet.h) / 2;
        CHECK(std::abs(middle - 42.9852) <= in_degrees(c.uncertainty));
        CHECK(c.unmet.h - c.met.h <= degrees(0.1));
        CHECK(c.uncertainty < degrees(0.1));
    }
}

TEST_CASE("a dip between two directions of a coarse grid is found by looking between",
          "[judgement]")
{
    // A post 8 mm wide at 100 mm stands at 7.5 degrees: from 5 and 10 degrees it hides less of the
    // lens than from between them.
    Study study =
        lamp_behind(plate(Point::Zero(), 10, 40), {wall(100, 13.165 - 4, 13.165 + 4, -300, 300)});
    study.sampling.step = degrees(5);
    // In view at 5 degrees: the post's shadow stands at y 0.4 to 8.4, so 5.4 of 10 mm are lit.
    const RuleRow row = made_row("area", at_least(150), 0, 15, -1, 1);
    const Findings f = check_study(asking(study, "area", {row}));
    CHECK(verdict(f).outcome == Outcome::not_met);
    const DirectionVerdict& worst = verdict(f).directions[verdict(f).worst];
    CHECK(worst.between);
    CHECK(in_degrees(f.looks[0].toward[worst.at].h) == Approx(7.5).margin(1));
}

TEST_CASE("a field far from its threshold says that it is met on the grid, and how fine that is",
          "[judgement]")
{
    const Findings f = check_study(
        asking(behind_knife_edge(), "area", {made_row("area", at_least(100), -45, 20, -5, 5)}));
    CHECK(verdict(f).outcome == Outcome::met);
    CHECK(verdict(f).between == Between::subdivided);
    CHECK(verdict(f).finest_step == degrees(1));
    const Findings line = check_study(
        asking(behind_knife_edge(), "area", {made_row("area", at_least(100), -45, 20, 0, 0)}));
    CHECK(verdict(line).between == Between::on_grid);
}
