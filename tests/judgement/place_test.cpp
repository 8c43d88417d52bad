#include "judgement/place.h"

#include "shapes/simple_shapes.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

#include <Eigen/Geometry>

using namespace glim;

namespace {

/// x ahead, y left, z up.
Vehicle ahead_is_x()
{
    Vehicle v;
    v.forward = Direction::x();
    return v;
}

/// Usual body CAD: x rearward, y to the right looking forward, z up.
Vehicle body_cad()
{
    Vehicle v;
    v.forward = -Direction::x();
    return v;
}

Ground ground_at(double z) { return {Point(0, 0, z), Direction::z()}; }

bool at(const Point& p, double x, double y, double z) { return (p - Point(x, y, z)).norm() < 1e-9; }

/// 100 wide in y, 40 high in z, at x = 900, centre (900, 600, 700), facing +x.
TriangleMesh left_lamp() { return shapes::plate({900, 600, 700}, 100, 40, 2); }

} // namespace

TEST_CASE("a flat lamp stands where its rectangle does", "[judgement]")
{
    const auto place = place_of(left_lamp(), Direction::x(), ahead_is_x(), ground_at(0));
    REQUIRE(place);
    CHECK(place->side == Side::left);
    CHECK(in_mm(place->least_height) == Approx(680));
    CHECK(in_mm(place->most_height) == Approx(720));
    CHECK(place->lowest.z() == Approx(680));
    CHECK(place->highest.z() == Approx(720));
    CHECK(in_mm(place->from_median_outermost) == Approx(650));
    CHECK(in_mm(place->from_median_innermost) == Approx(550));
    CHECK(place->outermost.y() == Approx(650));
    CHECK(place->innermost.y() == Approx(550));
    CHECK(at(place->centroid, 900, 600, 700));
    CHECK(in_mm2(place->on_axis) == Approx(4000));
}

TEST_CASE("the mirror image has the same heights and distances, on the other side", "[judgement]")
{
    Vehicle v = ahead_is_x();
    v.median = millimetres(20);
    const TriangleMesh right = placed(left_lamp(), v.across_median());
    const auto a = place_of(left_lamp(), Direction::x(), v, ground_at(0));
    const auto b = place_of(right, Direction::x(), v, ground_at(0));
    REQUIRE(a);
    REQUIRE(b);
    CHECK(b->side == Side::right);
    CHECK(in_mm(a->from_median_outermost) == Approx(630));
    CHECK(in_mm(b->from_median_outermost) == Approx(630));
    CHECK(in_mm(b->from_median_innermost) == Approx(530));
    CHECK(b->outermost.y() == Approx(-610)); // 630 to the right of y = 20
    CHECK(b->least_height == a->least_height);
    CHECK(in_mm(between_inner_edges(*a, *b)) == Approx(1060));
    CHECK(between_inner_edges(*b, *a) == between_inner_edges(*a, *b));
}

TEST_CASE("with the front towards -x, left is at negative y", "[judgement]")
{
    const TriangleMesh lamp = turned_over(shapes::plate({-800, -600, 650}, 100, 40));
    const auto place = place_of(lamp, -Direction::x(), body_cad(), ground_at(0));
    REQUIRE(place);
    CHECK(place->side == Side::left);
    CHECK(in_mm(place->from_median_outermost) == Approx(650));
    CHECK(place->outermost.y() == Approx(-650));
    CHECK(place->innermost.y() == Approx(-550));
    // Looked at from behind, nothing faces the axis.
    CHECK_FALSE(place_of(lamp, Direction::x(), body_cad(), ground_at(0)));
}

TEST_CASE("heights are at right angles to a ground with rake", "[judgement]")
{
    // Ground through the origin that falls by 0.1 for each 1 ahead: its normal is (0.1, 0, 1).
    Ground ground;
    ground.up = Direction::along(Vector(0.1, 0, 1));
    const auto place = place_of(left_lamp(), Direction::x(), ahead_is_x(), ground);
    REQUIRE(place);
    CHECK(in_mm(place->least_height) == Approx((90 + 680) / std::sqrt(1.01)));
    CHECK(in_mm(place->most_height) == Approx((90 + 720) / std::sqrt(1.01)));
}

TEST_CASE("the lowest point on a raked ground need not be the lowest in the drawing", "[judgement]")
{
    // Two plates: one 10 lower in z, but 300 farther ahead, where the ground lies 30 lower.
    const TriangleMesh lamp = shapes::joined(shapes::plate({0, 600, 700}, 20, 20),
                                             shapes::plate({300, 600, 690}, 20, 20));
    Ground ground;
    ground.up = Direction::along(Vector(0.1, 0, 1));
    const auto place = place_of(lamp, Direction::x(), ahead_is_x(), ground);
    REQUIRE(place);
    CHECK(place->lowest.x() == 0);
    CHECK(place->highest.x() == 300);
    CHECK(in_mm(place->most_height - place->least_height) == Approx(40 / std::sqrt(1.01)));
}

TEST_CASE("along a tilted axis the area shrinks by the cosine, and the place stays", "[judgement]")
{
    const Direction tilted = Direction::along(Vector(cos(degrees(30)), 0, sin(degrees(30))));
    const auto place = place_of(left_lamp(), tilted, ahead_is_x(), ground_at(100));
    REQUIRE(place);
    CHECK(in_mm2(place->on_axis) == Approx(4000 * std::sqrt(3.0) / 2));
    CHECK(at(place->centroid, 900, 600, 700));
    CHECK(in_mm(place->least_height) == Approx(580));
}

TEST_CASE("facets that do not face the axis are no part of the apparent surface", "[judgement]")
{
    // A quarter of a cylinder's wall about (0, 0): from straight ahead to straight left, radius
    // 200. Along +x it shows 200 x height, y from 0 to 200; along +y it shows the same from the
    // side.
    const TriangleMesh wall = shapes::cylinder_wall(200, 50, degrees(-60), degrees(150), 210);
    const TriangleMesh lamp = shapes::moved(wall, {0, 500, 600});
    const auto place = place_of(lamp, Direction::x(), ahead_is_x(), ground_at(0));
    REQUIRE(place);
    // The part from -60 to 90 degrees faces +x: y from -173.2 to 200.
    CHECK(in_mm(place->from_median_outermost) == Approx(700));
    CHECK(in_mm(place->from_median_innermost) == Approx(500 - 200 * sin(degrees(60))));
    CHECK(in_mm2(place->on_axis) == Approx(50 * 200 * (1 + sin(degrees(60)))));
    CHECK(place->outermost.x() == Approx(0).margin(1e-9));
}

TEST_CASE("the centroid weighs by the area as seen along the axis", "[judgement]")
{
    // Two squares of 20 x 20; the second is turned by 60 degrees and shows half its area.
    const TriangleMesh front = shapes::plate({0, 100, 0}, 20, 20);
    const TriangleMesh turned =
        shapes::moved(shapes::turned(shapes::plate({0, 0, 0}, 20, 20), degrees(60)), {0, 400, 0});
    const auto place =
        place_of(shapes::joined(front, turned), Direction::x(), ahead_is_x(), ground_at(-10));
    REQUIRE(place);
    CHECK(in_mm2(place->on_axis) == Approx(600));
    CHECK(at(place->centroid, 0, 200, 0));
}

TEST_CASE("walls along the axis, seen edge on, do not lower a lamp on a raked ground",
          "[judgement]")
{
    // A plate with a floor that runs 50 back from its lower edge; rounding tilts it by 1e-12.
    TriangleMesh lamp = shapes::plate({0, 600, 700}, 20, 20);
    const auto first = static_cast<std::uint32_t>(lamp.points.size());
    lamp.points.insert(lamp.points.end(), {Point(-50, 590, 690), Point(-50, 610, 690),
                                           Point(0, 610, 690 - 5e-11), Point(0, 590, 690 - 5e-11)});
    lamp.facets.push_back({first, first + 2, first + 1});
    lamp.facets.push_back({first, first + 3, first + 2});
    lamp.facets.push_back({first, first + 1, first + 2});
    lamp.facets.push_back({first, first + 2, first + 3});
    Ground ground;
    ground.up = Direction::along(Vector(0.1, 0, 1));
    const auto place = place_of(lamp, Direction::x(), ahead_is_x(), ground);
    REQUIRE(place);
    CHECK(in_mm(place->least_height) == Approx(690 / std::sqrt(1.01)));
}

TEST_CASE("a lamp on the median plane counts as on the left and reaches over to the right",
          "[judgement]")
{
    const auto place = place_of(shapes::plate({0, 0, 1200}, 300, 20, 7), Direction::x(),
                                ahead_is_x(), ground_at(0));
    REQUIRE(place);
    CHECK(place->side == Side::left);
    CHECK(in_mm(place->from_median_outermost) == Approx(150));
    CHECK(in_mm(place->from_median_innermost) == Approx(-150));
    CHECK(place->innermost.y() == Approx(-150));
}

TEST_CASE("a vehicle drawn with y up is measured like any other", "[judgement]")
{
    // z ahead, y up, so x is left: y up x z ahead = x.
    Vehicle v;
    v.forward = Direction::z();
    v.up = Direction::y();
    Eigen::Matrix3d to;
    to << 0, 1, 0, 0, 0, 1, 1, 0, 0; // columns: where x ahead, y left, z up go
    const TriangleMesh lamp = placed(left_lamp(), Placement::axes(to, Eigen::Matrix3d::Identity()));
    const auto place = place_of(lamp, Direction::z(), v, {Point(0, 30, 0), Direction::y()});
    REQUIRE(place);
    CHECK(in_mm(place->least_height) == Approx(650));
    CHECK(in_mm(place->from_median_outermost) == Approx(650));
    CHECK(at(place->centroid, 600, 700, 900));
}
