#include "remedy/sight_lines.h"

#include "judgement/made_rules.h"
#include "machine/stop.h"
#include "remedy/keep_clear_scenes.h"
#include "shapes/small_study.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::test;

namespace {

/// A flat lens of 150 by 60 mm, 700 mm from the median plane and 800 mm above the ground, looking
/// `turned` outboard.
LampSketch sketch(std::vector<RuleRow> rows, Angle turned = {})
{
    LampSketch sketch;
    TriangleMesh lens = shapes::turned(shapes::plate(Point(0, 0, 0), 150, 60, 1), turned);
    for (Point& p : lens.points)
        p += Point(0, 700, 800);
    sketch.study = shapes::lamp_alone(lens);
    sketch.study.grounds = {{"unladen", Ground{}}};
    sketch.study.vehicle.overall_width = millimetres(1800);
    sketch.study.lamps[LampId{0}].centre = Point(0, 700, 800);
    sketch.study = shapes::asking(std::move(sketch.study), rows.front().id, rows);
    sketch.ahead = millimetres(1000);
    sketch.lateral = millimetres(700);
    sketch.above = millimetres(800);
    sketch.width = millimetres(box_of(lens).size().y());
    sketch.height = millimetres(60);
    return sketch;
}

RuleRow area_row()
{
    return shapes::made_row("area", LeastArea{square_millimetres(1250)}, -45, 80, -15, 15);
}

SightLines lines_of(const LampSketch& asked) { return find_sight_lines(asked, {}); }

} // namespace

// A flat lens shows cos(angle to its normal) of its face; least in the corner farthest from that.
TEST_CASE("the least lens is the area needed divided by the cosine at the worst corner", "[remedy]")
{
    for (const double turned : {0.0, 20.0, 40.0}) {
        const SightLines lines = lines_of(sketch({area_row()}, degrees(turned)));
        REQUIRE(lines.rows.size() == 1);
        const SightRow& row = lines.rows.front();
        const double worst = cos(degrees(std::max(45 + turned, 80 - turned))) * cos(degrees(15));
        REQUIRE(row.least_face);
        if (worst <= 0)
            continue;
        CHECK(in_mm2(*row.least_face) == Approx(1250 / worst));
        CHECK(in_mm2(row.least_shown) == Approx(9000 * worst));
    }
}

TEST_CASE("a lens that turns away from a corner is enough at no size", "[remedy]")
{
    const SightLines lines = lines_of(sketch({area_row()}, degrees(60)));
    CHECK_FALSE(lines.rows.front().least_face);
}

// The whole lens counts: at 45 degrees inboard from its inner edge, one mm ahead for each inboard.
TEST_CASE("the nose may reach one mm ahead for each mm inboard of the lens", "[remedy]")
{
    const SightLines lines =
        lines_of(sketch({shapes::made_row("clear", NoObstacle{}, -45, 80, -15, 15)}));
    const SightRow& row = lines.rows.front();
    REQUIRE(row.nose.size() > 20);
    std::size_t limited = 0;
    for (const NoseReach& reach : row.nose) {
        const double inboard = 625 - in_mm(reach.lateral);
        CHECK(reach.ahead.has_value() == (inboard < 1000));
        if (!reach.ahead)
            continue;
        ++limited;
        CHECK(in_mm(*reach.ahead) == Approx(inboard).margin(0.01));
    }
    CHECK(limited > 15);
    CHECK(in_mm(row.nose.back().lateral) == Approx(-900));
}

// Straight ahead the lower limit falls by tan 15 for each mm of level distance; the farthest part
// of the lens in view lies across the whole field, so that from the side it falls by tan 15 / cos
// 80, until the lens ends.
TEST_CASE("side and front curves lie where the closed form has them", "[remedy]")
{
    const SightLines lines =
        lines_of(sketch({shapes::made_row("clear", NoObstacle{}, -45, 45, -15, 15)}));
    std::size_t sides = 0, fronts = 0;
    for (const LimitCurve& curve : lines.curves) {
        if (curve.view == SightView::side && curve.label == "wherever across") {
            ++sides;
            for (const Point2& p : curve.points) {
                // At the edges of the field the level distance is x / cos 45.
                const double off = 30 + tan(degrees(15)) * p.x() / cos(degrees(45));
                CHECK(std::abs(p.y() - 800) <= off + 1e-6);
                CHECK(std::abs(p.y() - 800) >= off - 8); // places across are 20 mm apart
            }
        }
        if (curve.view == SightView::front) {
            ++fronts;
            double least = 1e9, most = -1e9;
            for (const Point2& p : curve.points) {
                least = std::min(least, p.x());
                most = std::max(most, p.x());
            }
            const double ahead = std::strtod(curve.label.c_str(), nullptr);
            CHECK(least == Approx(625 - ahead).margin(10));
            CHECK(most == Approx(775 + ahead).margin(10));
        }
    }
    CHECK(sides == 1);
    CHECK(fronts == 3);
}

TEST_CASE("rows of place are told of the lens's middle", "[remedy]")
{
    const SightLines lines = lines_of(sketch(
        {area_row(),
         shapes::made_row(
             "height",
             HeightLimits{HeightOf::apparent_surface, millimetres(350), millimetres(1500), {}}),
         shapes::made_row("axis", HeightLimits{HeightOf::reference_axis, millimetres(810), {}, {}}),
         shapes::made_row("edge", ToOuterEdge{millimetres(400)}),
         shapes::made_row("gap", BetweenInnerEdges{millimetres(600)})}));
    REQUIRE(lines.places.size() == 4);
    CHECK(in_mm(*lines.places[0].least) == Approx(380));
    CHECK(in_mm(*lines.places[0].most) == Approx(1470));
    CHECK(lines.places[0].keeps());
    CHECK(in_mm(*lines.places[1].least) == Approx(810));
    CHECK_FALSE(lines.places[1].keeps());
    CHECK(in_mm(*lines.places[2].least) == Approx(900 - 400 - 75));
    CHECK(in_mm(*lines.places[3].least) == Approx(300 + 75));
}

TEST_CASE("a field of no width is refused, and one beside others is told without curves",
          "[remedy]")
{
    const RuleRow line = shapes::made_row("line", NoObstacle{}, -45, -45, -15, 15);
    CHECK_THROWS_AS(lines_of(sketch({line})), InputError);
}

TEST_CASE("sight lines stop while a row is drawn, whether a part is chosen or all is kept",
          "[remedy]")
{
    for (const RuleRow& row :
         {area_row(), shapes::made_row("clear", NoObstacle{}, -45, 80, -15, 15)}) {
        std::stop_source stop;
        const Workers workers{.threads = 1,
                              .stop = stop.get_token(),
                              .progress = [&](std::size_t, std::size_t) { stop.request_stop(); }};
        CHECK_THROWS_AS(find_sight_lines(sketch({row}), workers), Stopped);
    }
}
