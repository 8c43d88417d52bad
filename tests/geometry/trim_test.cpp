#include "geometry/trim.h"

#include "geometry/cell_plate.h"
#include "geometry/placement.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace glim;
using glim::test::plate;

namespace {

const Direction forward = -Direction::x();

Trim with_curve(std::vector<Point> curve)
{
    Trim trim;
    trim.curve = std::move(curve);
    return trim;
}

double area_left(const TriangleMesh& mesh, const Trim& trim, const Direction& axis = forward)
{
    const std::optional<TriangleMesh> left = trimmed(mesh, trim, axis);
    REQUIRE(left);
    return in_mm2(area_of(*left));
}

} // namespace

TEST_CASE("no trim leaves the mesh as it is", "[geometry]")
{
    CHECK(trimmed(plate(), {}, forward)->facets == plate().facets);
}

TEST_CASE("a box cuts facets where its faces run", "[geometry]")
{
    Trim trim;
    trim.box = Box{{-1, 12.5, -100}, {1, 80, 40.25}};
    CHECK(area_left(plate(), trim) == Approx(67.5 * 40.25).epsilon(1e-12));
    const TriangleMesh left = *trimmed(plate(), trim, forward);
    CHECK(box_of(left).least == Point(0, 12.5, 0));
    CHECK(box_of(left).most == Point(0, 80, 40.25));
    for (std::size_t f = 0; f < left.facets.size(); ++f)
        CHECK(area_vector(left, f).x() < 0);
    trim.box = Box{{1, 0, 0}, {2, 100, 50}};
    CHECK(trimmed(plate(), trim, forward)->facets.empty());
}

// The triangle's own area; the arrow's is 30 x 40 / 2 without its notch of 30 x 10 / 2.
TEST_CASE("a curve cuts along its outline, convex or not, whichever way it runs", "[geometry]")
{
    CHECK(area_left(plate(), with_curve({{9, 10, 10}, {9, 70, 10}, {9, 10, 40}})) ==
          Approx(900).epsilon(1e-9));
    std::vector<Point> arrow = {{0, 10, 5}, {0, 25, 15}, {0, 40, 5}, {0, 25, 45}};
    CHECK(area_left(plate(), with_curve(arrow)) == Approx(600 - 150).epsilon(1e-9));
    std::reverse(arrow.begin(), arrow.end());
    CHECK(area_left(plate(), with_curve(arrow)) == Approx(600 - 150).epsilon(1e-9));
}

TEST_CASE("a curve is projected along the axis, so that a slanted one lets more through",
          "[geometry]")
{
    // Along an axis turned by 60 degrees a curve of 20 x 20 square to it covers 20 / cos 60 = 40.
    const Placement turn = Placement::turn(Point::Zero(), Direction::z(), degrees(60));
    std::vector<Point> square;
    for (const Point& p : {Point(0, 0, 10), Point(0, 20, 10), Point(0, 20, 30), Point(0, 0, 30)})
        square.push_back(turn(p) + Vector(0, 30, 0));
    CHECK(area_left(plate(), with_curve(square), turn(forward)) == Approx(800).epsilon(1e-9));
}

TEST_CASE("a curve cuts a face that stands edge on to the axis", "[geometry]")
{
    TriangleMesh side = plate();
    for (Point& p : side.points)
        p = Point(p.y(), 0, p.z()); // along the axis
    CHECK(area_left(side, with_curve({{0, -5, 20}, {0, 5, 20}, {0, 5, 32}, {0, -5, 32}})) ==
          Approx(100 * 12).epsilon(1e-9));
}

TEST_CASE("inset, curve and box hold together", "[geometry]")
{
    Trim trim = with_curve({{0, 20, -10}, {0, 120, -10}, {0, 120, 60}, {0, 20, 60}});
    trim.inset = millimetres(5);
    trim.box = Box{{-1, 0, 0}, {1, 100, 30}};
    CHECK(area_left(plate(), trim) == Approx(75 * 25).epsilon(1e-7));
}

TEST_CASE("a curve that crosses itself or encloses nothing gives nothing", "[geometry]")
{
    CHECK_FALSE(
        trimmed(plate(), with_curve({{0, 0, 0}, {0, 9, 9}, {0, 9, 0}, {0, 0, 9}}), forward));
    CHECK_FALSE(trimmed(plate(), with_curve({{0, 0, 0}, {0, 9, 9}, {0, 5, 5}}), forward));
    CHECK_FALSE(trimmed(plate(), with_curve({{0, 0, 0}, {7, 0, 0}, {7, 9, 0}}), forward));
}

TEST_CASE("a convex outline cuts the same whichever way its corners run", "[geometry]")
{
    // A kite of diagonals 60 and 40 on a plate of 100 by 50: half their product.
    std::vector<Point> kite = {{0, 20, 25}, {0, 50, 5}, {0, 80, 25}, {0, 50, 45}};
    CHECK(in_mm2(area_of(part_within(plate(), kite, Direction::x()))) == Approx(1200));
    std::reverse(kite.begin(), kite.end());
    CHECK(in_mm2(area_of(part_within(plate(), kite, Direction::x()))) == Approx(1200));
}
