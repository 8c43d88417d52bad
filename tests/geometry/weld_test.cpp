#include "geometry/weld.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <map>
#include <tuple>

using namespace glim;

namespace {

/// Points on a coarse grid, so that many are equal: the sequence never changes.
std::vector<Point> many_points(std::size_t count)
{
    std::vector<Point> points;
    std::uint32_t state = 12345;
    const auto next = [&] {
        state = state * 1664525U + 1013904223U;
        return static_cast<double>(state >> 28U) / 3 - 2;
    };
    for (std::size_t i = 0; i < count; ++i) {
        const double x = next(), y = next(), z = next();
        points.emplace_back(x, y, z);
    }
    return points;
}

} // namespace

TEST_CASE("the points of a table are numbered in the order in which they came", "[geometry]")
{
    PointTable table;
    CHECK(table.add({3, 0, 0}) == 0);
    CHECK(table.add({1, 0, 0}) == 1);
    CHECK(table.add({3, 0, 0}) == 0);
    CHECK(table.add({2, 0, 0}) == 2);
    const std::vector<Point> points = table.take_points();
    REQUIRE(points.size() == 3);
    CHECK(points[1] == Point(1, 0, 0));
    CHECK(table.add({2, 0, 0}) == 0);
}

TEST_CASE("points that differ in the last bit stay two", "[geometry]")
{
    PointTable table;
    CHECK(table.add({1, 1, 1}) == 0);
    CHECK(table.add({1, 1, std::nextafter(1.0, 2.0)}) == 1);
    CHECK(table.add({1, std::nextafter(1.0, 0.0), 1}) == 2);
}

TEST_CASE("minus zero is zero", "[geometry]")
{
    PointTable table;
    CHECK(table.add({-0.0, 5, -0.0}) == 0);
    CHECK(table.add({0.0, 5, 0.0}) == 0);
    CHECK_FALSE(std::signbit(table.take_points()[0].x()));
}

// The second way to the same answer: a sorted map on the coordinates.
TEST_CASE("a table that grows many times gives the numbers that a map gives", "[geometry]")
{
    const std::vector<Point> points = many_points(20000);
    std::map<std::tuple<double, double, double>, std::uint32_t> numbers;
    PointTable table;
    for (const Point& p : points) {
        const auto next = static_cast<std::uint32_t>(numbers.size());
        const auto [found, is_new] = numbers.try_emplace({p.x(), p.y(), p.z()}, next);
        REQUIRE(table.add(p) == found->second);
    }
    CHECK(table.take_points().size() == numbers.size());
    CHECK(numbers.size() > 2000);
    CHECK(numbers.size() < points.size());
}

TEST_CASE("a welded mesh has every point once, in the order of its first use", "[geometry]")
{
    const TriangleMesh soup{
        {{7, 7, 7}, {0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {1, 0, 0}, {1, 1, 0}, {0, 1, 0}},
        {{1, 2, 3}, {6, 4, 5}}};
    const TriangleMesh mesh = welded(soup);
    CHECK(mesh.points == std::vector<Point>{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {1, 1, 0}});
    CHECK(mesh.facets == std::vector<Facet>{{0, 1, 2}, {2, 1, 3}});
}

TEST_CASE("welding keeps degenerate and duplicate facets", "[geometry]")
{
    const TriangleMesh soup{{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {0, 0, 0}},
                            {{0, 1, 2}, {3, 1, 2}, {0, 3, 0}}};
    const TriangleMesh mesh = welded(soup);
    CHECK(mesh.points.size() == 3);
    CHECK(mesh.facets == std::vector<Facet>{{0, 1, 2}, {0, 1, 2}, {0, 0, 0}});
}
