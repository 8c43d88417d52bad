#include "geometry/grid_loops.h"

#include <catch2/catch.hpp>

#include <random>

using namespace glim;

namespace {

/// How often the loops go round a point that lies on none of their edges, counter-clockwise +: the
/// winding number, by crossings of a ray along x.
int turns_round(const std::vector<GridLoop>& loops, double x, double y)
{
    int turns = 0;
    for (const GridLoop& loop : loops)
        for (std::size_t i = 0; i < loop.size(); ++i) {
            const GridPoint& a = loop[i];
            const GridPoint& b = loop[(i + 1) % loop.size()];
            const double ay = double(a[1]), by = double(b[1]);
            if ((ay > y) == (by > y))
                continue;
            const double cut = double(a[0]) + (y - ay) / (by - ay) * double(b[0] - a[0]);
            if (cut > x)
                turns += by > ay ? 1 : -1;
        }
    return turns;
}

std::size_t edges_in(const std::vector<GridLoop>& loops)
{
    std::size_t count = 0;
    for (const GridLoop& loop : loops)
        count += loop.size();
    return count;
}

/// A square grid of cells, each as two triangles.
std::vector<GridLoop> mesh(std::int64_t cells)
{
    std::vector<GridLoop> triangles;
    for (std::int64_t i = 0; i < cells; ++i)
        for (std::int64_t j = 0; j < cells; ++j) {
            triangles.push_back({{i, j}, {i + 1, j}, {i + 1, j + 1}});
            triangles.push_back({{i, j}, {i + 1, j + 1}, {i, j + 1}});
        }
    return triangles;
}

} // namespace

TEST_CASE("of the facets of a mesh the rim is left", "[geometry]")
{
    const std::vector<GridLoop> rim = without_shared_edges(mesh(5));
    REQUIRE(rim.size() == 1);
    CHECK(rim.front().size() == 4 * 5);
}

TEST_CASE("a hole keeps its rim", "[geometry]")
{
    std::vector<GridLoop> holed = mesh(3);
    holed.erase(holed.begin() + 8, holed.begin() + 10); // the middle cell
    CHECK(edges_in(without_shared_edges(holed)) == 4 * 3 + 4);
    CHECK(turns_round(without_shared_edges(holed), 1.6, 1.4) == 0);
}

TEST_CASE("what runs there and back is nothing, what runs twice stays twice", "[geometry]")
{
    const GridLoop there = {{0, 0}, {4, 0}, {0, 4}};
    const GridLoop back = {{0, 0}, {0, 4}, {4, 0}};
    CHECK(without_shared_edges({there, back}).empty());
    CHECK(turns_round(without_shared_edges({there, there}), 0.5, 0.5) == 2);
    CHECK(without_shared_edges({{{1, 1}, {1, 1}}}).empty());
}

TEST_CASE("every place is gone round as often as before", "[geometry]")
{
    std::mt19937 random(7); // its sequence is fixed by the standard
    const auto below = [&](std::uint32_t n) { return static_cast<std::int64_t>(random() % n); };
    for (int round = 0; round < 50; ++round) {
        std::vector<GridLoop> loops;
        for (int i = 0; i < 30; ++i)
            loops.push_back({{below(6), below(6)}, {below(6), below(6)}, {below(6), below(6)}});
        const std::vector<GridLoop> left = without_shared_edges(loops);
        CHECK(edges_in(left) <= edges_in(loops));
        for (int i = 0; i < 40; ++i) {
            // Off all lines between the grid's points.
            const double x = double(below(6)) + 0.31830988618, y = double(below(6)) + 0.36787944117;
            CHECK(turns_round(left, x, y) == turns_round(loops, x, y));
        }
    }
}
