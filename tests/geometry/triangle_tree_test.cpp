#include "geometry/triangle_tree.h"

#include "geometry/plane_shapes.h"

#include <catch2/catch.hpp>

#include <set>

using namespace glim;
using namespace glim::test;

TEST_CASE("a visit reaches every triangle whose box is within reach", "[geometry]")
{
    Numbers numbers(3);
    std::vector<PlaneTriangle> triangles;
    for (int i = 0; i < 300; ++i) {
        const Point2 at = numbers.point(100);
        triangles.push_back({at, at + numbers.point(2), at + numbers.point(2)});
    }
    const TriangleTree tree(triangles);
    const PlaneBox around(Point2(30, 40), Point2(35, 42));
    const double squared_reach = 64;
    std::multiset<std::size_t> seen;
    tree.visit(around, squared_reach, [&](std::size_t i) { seen.insert(i); });
    std::size_t within = 0;
    for (std::size_t i = 0; i < triangles.size(); ++i)
        if (box_of(triangles[i]).squaredExteriorDistance(around) <= squared_reach) {
            ++within;
            CHECK(seen.count(i) == 1);
        }
    CHECK(within > 5);
    CHECK(seen.size() < 60); // and not simply all
}

TEST_CASE("a reach that shrinks on the way spares the rest", "[geometry]")
{
    std::vector<PlaneTriangle> row;
    for (int i = 0; i < 1000; ++i)
        row.push_back({Point2(i, 0), Point2(i, 1), Point2(i + 0.5, 0)});
    const TriangleTree tree(row);
    double squared_reach = 1e9;
    std::size_t looked_at = 0;
    const PlaneBox around(Point2(-1, 0), Point2(-1, 0));
    tree.visit(around, squared_reach, [&](std::size_t i) {
        ++looked_at;
        squared_reach = std::min(squared_reach, box_of(row[i]).squaredExteriorDistance(around));
    });
    CHECK(squared_reach == 1);
    CHECK(looked_at <= 8);
}

TEST_CASE("nothing has no tree to visit", "[geometry]")
{
    const TriangleTree tree({});
    tree.visit(PlaneBox(Point2(0, 0)), 1e9, [](std::size_t) { FAIL(); });
    CHECK(tree.box().isEmpty());
}
