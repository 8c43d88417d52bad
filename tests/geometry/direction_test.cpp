#include "geometry/direction.h"

#include <catch2/catch.hpp>

#include <Eigen/Geometry>

#include <cmath>

using namespace glim;

namespace {

/// Directions all round, the axes and vectors close to them among them.
std::vector<Vector> vectors_all_round()
{
    std::vector<Vector> all{Vector::UnitX(), -Vector::UnitY(), Vector::UnitZ(), {1e-9, 0, 1}};
    for (int i = 0; i < 200; ++i)
        all.emplace_back(std::cos(0.7 * i), std::sin(1.3 * i), std::cos(2.1 * i + 0.4));
    return all;
}

} // namespace

TEST_CASE("a direction is unit, however long the vector was", "[geometry]")
{
    for (const double length : {1e-150, 1e-3, 1.0, 7.0, 1e150})
        for (const Vector& v : vectors_all_round())
            CHECK(Direction::along(length * v).vector().norm() == Approx(1).margin(1e-15));
}

TEST_CASE("a unit vector becomes a direction bit for bit", "[geometry]")
{
    CHECK(Direction::along({0, -1, 0}).vector() == Vector(0, -1, 0));
    CHECK(Direction::along({0.6, 0.8, 0}).vector() == Vector(0.6, 0.8, 0));
}

TEST_CASE("an opposite direction turns back exactly", "[geometry]")
{
    const Direction d = Direction::along({1, 2, 3});
    CHECK((-d).vector() == -d.vector());
    CHECK(d.dot(-d) == Approx(-1));
}

TEST_CASE("a view plane is orthonormal, and right-handed about its direction", "[geometry]")
{
    for (const Vector& v : vectors_all_round()) {
        const Direction d = Direction::along(v);
        const ViewPlane plane(d);
        CHECK(plane.across.norm() == Approx(1).margin(1e-14));
        CHECK(plane.up.norm() == Approx(1).margin(1e-14));
        CHECK(plane.across.dot(plane.up) == Approx(0).margin(1e-14));
        CHECK((plane.across.cross(plane.up) - d.vector()).norm() == Approx(0).margin(1e-14));
    }
}

TEST_CASE("what differs only along the direction projects to the same place", "[geometry]")
{
    const Direction d = Direction::along({-2, 1, 0.5});
    const ViewPlane plane(d);
    const Point p(100, -20, 35);
    const Point2 shift = plane.project(p + 400 * d.vector()) - plane.project(p);
    CHECK(shift.norm() == Approx(0).margin(1e-12));
    const Point2 moved = plane.project(p + 3 * plane.across + 4 * plane.up) - plane.project(p);
    CHECK(moved.norm() == Approx(5));
}
