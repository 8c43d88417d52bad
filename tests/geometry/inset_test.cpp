#include "geometry/inset.h"

#include "geometry/cell_plate.h"
#include "geometry/placement.h"
#include "units/trig.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace glim;
using glim::test::plate;

namespace {

constexpr double pi = 3.14159265358979323846;

double area(const TriangleMesh& mesh) { return in_mm2(area_of(mesh)); }

} // namespace

TEST_CASE("a plate of 100 x 50 with an inset of 5 is one of 90 x 40", "[geometry]")
{
    for (const auto& [columns, rows] : {std::pair(1, 1), {7, 3}, {40, 20}}) {
        const TriangleMesh left = inset(plate(columns, rows), millimetres(5));
        INFO(columns);
        CHECK(area(left) == Approx(3600).epsilon(1e-7));
        const Box box = box_of(left);
        CHECK((box.least - Point(0, 5, 5)).norm() < 1e-5);
        CHECK((box.most - Point(0, 95, 45)).norm() < 1e-5);
        for (std::size_t f = 0; f < left.facets.size(); ++f)
            CHECK(area_vector(left, f).x() < 0);
    }
}

TEST_CASE("an inset is the same however the plate stands", "[geometry]")
{
    const Placement turned =
        Placement::turn(Point(300, -2000, 700), Direction::along(Vector(1, 2, -1)), degrees(33));
    CHECK(area(inset(placed(plate(7, 3), turned), millimetres(5))) == Approx(3600).epsilon(1e-7));
}

TEST_CASE("an inset that meets itself in the middle leaves nothing", "[geometry]")
{
    CHECK(inset(plate(7, 3), millimetres(26)).facets.empty());
    CHECK(area(inset(plate(1, 1), millimetres(24))) == Approx(52 * 2).epsilon(1e-6));
}

TEST_CASE("a hole has open edges, and facets there twice have not", "[geometry]")
{
    // Without its middle cell of 100/3 x 50/3: nearer than 2 to the hole lie its sides, drawn out
    // by 2, and a quarter circle at each of its corners.
    TriangleMesh frame = plate(3, 3);
    frame.facets.erase(frame.facets.begin() + 8, frame.facets.begin() + 10);
    const double hole = 100.0 / 3 * 50 / 3;
    const double around = 2 * 2 * (100.0 / 3 + 50.0 / 3) + pi * 4;
    const double left = area(inset(frame, millimetres(2)));
    CHECK(left == Approx(96 * 46 - hole - around).margin(0.02));
    CHECK(left >= 96 * 46 - hole - around);

    TriangleMesh twice = plate(3, 3);
    const std::vector<Facet> again = twice.facets;
    twice.facets.insert(twice.facets.end(), again.begin(), again.end());
    CHECK(area(inset(twice, millimetres(5))) == Approx(3600).epsilon(1e-7));
}

// A wall of radius 60 over a right angle, 50 high: 3 mm along the wall is 3 mm in space but for
// the bend, 3^3 / (24 * 60^2).
TEST_CASE("an inset is counted along a bent lens, not in a projection", "[geometry]")
{
    TriangleMesh wall = plate(45, 4);
    for (Point& p : wall.points) {
        const Angle at = degrees(90 * p.y() / 100);
        p = Point(-60 * cos(at), 60 * sin(at), p.z());
    }
    const double arc = 45 * 2 * 60 * sin(degrees(1));
    const double left = area(inset(wall, millimetres(3)));
    CHECK(left == Approx((arc - 6) * 44).epsilon(1e-4));
}

TEST_CASE("a closed body has no open edge to be inset from", "[geometry]")
{
    TriangleMesh tetrahedron;
    tetrahedron.points = {{0, 0, 0}, {10, 0, 0}, {0, 10, 0}, {0, 0, 10}};
    tetrahedron.facets = {{0, 2, 1}, {0, 1, 3}, {0, 3, 2}, {1, 2, 3}};
    CHECK(area(inset(tetrahedron, millimetres(1))) == Approx(area(tetrahedron)));
}
