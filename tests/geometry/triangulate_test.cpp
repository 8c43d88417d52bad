#include "geometry/triangulate.h"

#include <catch2/catch.hpp>

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>

using namespace glim;

namespace {

using Corners = std::vector<Point>;

Corners flat(const std::vector<Point2>& corners)
{
    Corners points;
    for (const Point2& p : corners)
        points.emplace_back(p.x(), p.y(), 0);
    return points;
}

/// Area along z of each triangle: none may be negative where the polygon runs counter-clockwise.
std::vector<double> areas(const Corners& corners, const std::vector<Facet>& triangles)
{
    const TriangleMesh mesh{corners, triangles};
    std::vector<double> all;
    for (std::size_t f = 0; f < triangles.size(); ++f)
        all.push_back(area_vector(mesh, f).z());
    return all;
}

/// Checks that the triangles fill a counter-clockwise polygon of this area, without overlap.
void expect_filled(const Corners& corners, double area)
{
    const auto triangles = triangulated(corners);
    REQUIRE(triangles);
    CHECK(triangles->size() == corners.size() - 2);
    double sum = 0;
    for (const double one : areas(corners, *triangles)) {
        CHECK(one >= 0);
        sum += one;
    }
    CHECK(sum == Approx(area));
}

/// Points of a star around the origin: every other corner stands back.
Corners star(int rays, double outer, double inner)
{
    Corners corners;
    for (int i = 0; i < 2 * rays; ++i) {
        const double radius = i % 2 == 0 ? outer : inner;
        const double angle = 3.141592653589793 * i / rays;
        corners.emplace_back(radius * std::cos(angle), radius * std::sin(angle), 0);
    }
    return corners;
}

} // namespace

TEST_CASE("a triangle is itself", "[geometry]")
{
    CHECK(triangulated(flat({{0, 0}, {1, 0}, {0, 1}})) == std::vector<Facet>{{0, 1, 2}});
}

TEST_CASE("a convex polygon becomes a fan", "[geometry]")
{
    const Corners pentagon = flat({{0, 0}, {2, 0}, {3, 2}, {1, 3}, {-1, 2}});
    CHECK(triangulated(pentagon) == fan_of(5));
    CHECK(fan_of(5) == std::vector<Facet>{{0, 1, 2}, {0, 2, 3}, {0, 3, 4}});
}

TEST_CASE("the winding is kept, whichever way the polygon runs and faces", "[geometry]")
{
    const Corners around = flat({{0, 0}, {4, 0}, {4, 3}, {2, 1}, {0, 3}});
    Corners reversed(around.rbegin(), around.rend());
    const auto triangles = triangulated(reversed);
    REQUIRE(triangles);
    for (const double area : areas(reversed, *triangles))
        CHECK(area < 0);
    for (const Vector& axis :
         {Vector::UnitX().eval(), Vector::UnitY().eval(), Vector(1, 2, -3).normalized().eval()}) {
        Corners turned;
        for (const Point& p : around)
            turned.push_back(Eigen::AngleAxisd(2.0, axis) * p);
        const Vector normal = Eigen::AngleAxisd(2.0, axis) * Vector::UnitZ();
        const auto cut = triangulated(turned);
        REQUIRE(cut);
        double sum = 0;
        for (std::size_t f = 0; f < cut->size(); ++f) {
            const double area = area_vector({turned, *cut}, f).dot(normal);
            CHECK(area > 0);
            sum += area;
        }
        CHECK(sum == Approx(8)); // 4 x 3 less a notch of 4 x 2 / 2
    }
}

TEST_CASE("a polygon with a notch is filled, and the notch stays open", "[geometry]")
{
    expect_filled(flat({{0, 0}, {4, 0}, {4, 3}, {2, 1}, {0, 3}}), 8);
    // An arrow head: a fan from its first corner would fill the notch.
    expect_filled(flat({{0, -2}, {4, 0}, {0, 2}, {1, 0}}), 6);
}

TEST_CASE("a comb and a star are filled", "[geometry]")
{
    std::vector<Point2> comb{{0, 0}, {20, 0}};
    for (int tooth = 9; tooth >= 0; --tooth) {
        comb.emplace_back(2 * tooth + 2, 5);
        comb.emplace_back(2 * tooth + 1, 1);
    }
    comb.emplace_back(0, 5);
    // The base 20 x 1 and ten valleys' flanks: each tooth is a triangle 4 high, 2 wide in all.
    expect_filled(flat(comb), 20 + 10 * 0.5 * 2 * 4);
    // 2n triangles with sides r and R and the angle 180/n between them.
    const double angle = 3.141592653589793 / 12;
    expect_filled(star(12, 5, 2), 12 * 5 * 2 * std::sin(angle));
}

TEST_CASE("corners on a straight edge do no harm", "[geometry]")
{
    expect_filled(flat({{0, 0}, {1, 0}, {2, 0}, {2, 2}, {1, 2}, {0, 2}, {0, 1}}), 4);
    const Corners halfway = flat({{0, 0}, {1, 0}, {2, 0}, {2, 2}, {0, 2}});
    for (const double area : areas(halfway, *triangulated(halfway)))
        CHECK(area > 0);
}

TEST_CASE("a polygon may reach a hole by a cut there and back", "[geometry]")
{
    // A square of 6 with a square hole of 2, joined from corner to corner.
    expect_filled(
        flat({{0, 0}, {6, 0}, {6, 6}, {0, 6}, {0, 0}, {2, 2}, {2, 4}, {4, 4}, {4, 2}, {2, 2}}), 32);
}

TEST_CASE("a polygon that crosses itself gives nothing", "[geometry]")
{
    CHECK_FALSE(triangulated(flat({{0, 0}, {2, 2}, {2, 0}, {0, 2}})));
    CHECK_FALSE(triangulated(flat({{0, 0}, {3, 3}, {3, 0}, {0, 1}})));
    Corners pentagram;
    for (const int i : {0, 2, 4, 1, 3})
        pentagram.emplace_back(std::cos(1.2566 * i), std::sin(1.2566 * i), 0);
    CHECK_FALSE(triangulated(pentagram));
    // A bow tie that stands upright, where it encloses as much left as right.
    CHECK_FALSE(triangulated(Corners{{0, 0, 0}, {0, 2, 2}, {0, 2, 0}, {0, 0, 2}}));
}

TEST_CASE("a polygon all on one line, or on one point, is a fan without area", "[geometry]")
{
    CHECK(triangulated(Corners{{0, 0, 0}, {1, 1, 1}, {3, 3, 3}, {2, 2, 2}}) == fan_of(4));
    CHECK(triangulated(Corners(5, Point(1, 2, 3))) == fan_of(5));
}

TEST_CASE("corners that are repeated are kept, as triangles without area", "[geometry]")
{
    expect_filled(flat({{0, 0}, {2, 0}, {2, 0}, {2, 2}, {0, 2}, {0, 2}}), 4);
}

TEST_CASE("a warped quadrilateral is cut in two", "[geometry]")
{
    const auto triangles = triangulated(Corners{{0, 0, 0}, {10, 0, 1}, {10, 10, 0}, {0, 10, 1}});
    CHECK(triangles == fan_of(4));
}

TEST_CASE("the cut is the same at any place and size", "[geometry]")
{
    const Corners shape = star(9, 5, 2);
    const auto cut = triangulated(shape);
    REQUIRE(cut);
    for (const double size : {1e-3, 1.0, 64.0, 1e5}) {
        Corners moved;
        for (const Point& p : shape)
            moved.push_back(size * (p + Point(16, -8, 4)));
        CHECK(triangulated(moved) == cut);
    }
}
