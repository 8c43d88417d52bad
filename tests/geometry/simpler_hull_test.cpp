#include "geometry/simpler_hull.h"

#include "geometry/convex_hull.h"
#include "geometry/plane_shapes.h"

#include <catch2/catch.hpp>

#include <numbers>

using namespace glim;
using namespace glim::test;

TEST_CASE("a polygon is held between two of fewer corners", "[geometry]")
{
    const ConvexPolygon hull = convex_hull(regular_polygon(1000, 100));
    const SimplerHull simpler = simpler_hull(hull, 100);
    CHECK(simpler.outside.size() == 100);
    CHECK(simpler.inside.size() <= 200);
    const double area = in_mm2(area_of(hull));
    CHECK(in_mm2(area_of(simpler.outside)) > area);
    CHECK(in_mm2(area_of(simpler.inside)) < area);
    // About a circle, 100 even sides would add tan(t)/t - 1 with t = pi/100: 3.3e-4. Sides that are
    // left out one by one stand less evenly.
    CHECK(in_mm2(area_of(simpler.outside)) < area * (1 + 1e-3));
    CHECK(in_mm2(area_of(simpler.inside)) > area * (1 - 2e-3));
}

TEST_CASE("the side that adds least is left out first", "[geometry]")
{
    // A square of 10 with one corner cut by 1 and one by 3: the small cut goes.
    const std::vector<Point2> points = {{1, 0}, {10, 0}, {10, 7}, {7, 10}, {0, 10}, {0, 1}};
    const SimplerHull simpler = simpler_hull(convex_hull(points), 5);
    CHECK(in_mm2(area_of(simpler.outside)) == Approx(100 - 4.5));
    CHECK(in_mm2(area_of(simpler.inside)) == Approx(100 - 4.5 - 0.5));
}

TEST_CASE("long straight sides stay while a rounding is made simpler", "[geometry]")
{
    // A rectangle of 200 x 100 with quarter circles of radius 10 in its corners.
    std::vector<Point2> points;
    for (const Point2& p : regular_polygon(4000, 10))
        points.emplace_back(p.x() + (p.x() >= 0 ? 90 : -90), p.y() + (p.y() >= 0 ? 40 : -40));
    const ConvexPolygon outside = simpler_hull(convex_hull(points), 40).outside;
    double longest = 0;
    for (std::size_t i = 0; i < outside.size(); ++i)
        longest = std::max(longest, (outside[(i + 1) % outside.size()] - outside[i]).norm());
    CHECK(longest == Approx(180).margin(3)); // the straight part, and a little of each rounding
    CHECK(in_mm2(area_of(outside)) ==
          Approx(200 * 100 - (4 - std::numbers::pi) * 100).epsilon(1e-3));
}
