#include "geometry/convex_hull.h"

#include "geometry/plane_shapes.h"
#include "geometry/turn.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::test;

namespace {

bool strictly_convex(const ConvexPolygon& hull)
{
    const std::size_t n = hull.size();
    for (std::size_t i = 0; i < n; ++i)
        if (turn_of(hull[i], hull[(i + 1) % n], hull[(i + 2) % n]) != 1)
            return false;
    return true;
}

bool holds(const ConvexPolygon& hull, const Point2& p)
{
    for (std::size_t i = 0; i < hull.size(); ++i)
        if (turn_of(hull[i], hull[(i + 1) % hull.size()], p) < 0)
            return false;
    return true;
}

} // namespace

TEST_CASE("the hull starts at the leftmost, lowest point and goes counter-clockwise", "[geometry]")
{
    const std::vector<Point2> points = {{2, 1}, {4, 4}, {0, 4}, {4, 0}, {0, 0}, {2, 0}, {0, 0}};
    CHECK(convex_hull(points) == ConvexPolygon{{0, 0}, {4, 0}, {4, 4}, {0, 4}});
}

TEST_CASE("points without area give their ends", "[geometry]")
{
    CHECK(convex_hull({}).empty());
    const std::vector<Point2> same = {{3, 1}, {3, 1}};
    CHECK(convex_hull(same) == ConvexPolygon{{3, 1}});
    const std::vector<Point2> line = {{2, 2}, {0, 0}, {5, 5}, {1, 1}};
    CHECK(convex_hull(line) == ConvexPolygon{{0, 0}, {5, 5}});
    const std::vector<Point2> upright = {{1, 2}, {1, 0}, {1, 1}};
    CHECK(convex_hull(upright) == ConvexPolygon{{1, 0}, {1, 2}});
}

TEST_CASE("no point lies outside its hull, and the order of the points is no matter", "[geometry]")
{
    Numbers numbers(1);
    for (int round = 0; round < 20; ++round) {
        std::vector<Point2> points;
        for (int i = 0; i < 60; ++i)
            points.push_back(numbers.point(100));
        const ConvexPolygon hull = convex_hull(points);
        CHECK(strictly_convex(hull));
        for (const Point2& p : points)
            CHECK(holds(hull, p));
        std::reverse(points.begin(), points.end());
        CHECK(convex_hull(points) == hull);
    }
}

TEST_CASE("points on a line but for rounding give a hull that is convex to the last bit",
          "[geometry]")
{
    // Multiples of 0.1 along two slanted lines: hardly any lies on the line exactly.
    std::vector<Point2> points;
    for (int i = 0; i <= 100; ++i) {
        points.emplace_back(0.1 * i, 0.3 * (0.1 * i));
        points.emplace_back(0.1 * i, 0.3 * (0.1 * i) + 1e-15 * (i % 3));
    }
    const ConvexPolygon hull = convex_hull(points);
    CHECK(strictly_convex(hull));
    for (const Point2& p : points)
        CHECK(holds(hull, p));
}
