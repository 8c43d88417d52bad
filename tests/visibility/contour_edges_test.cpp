#include "visibility/contour_edges.h"

#include "geometry/weld.h"
#include "shapes/simple_shapes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <numeric>

using namespace glim;
using namespace glim::shapes;

namespace {

std::vector<ContourEdge> all_edges(const TriangleMesh& mesh)
{
    std::vector<std::uint32_t> all(mesh.facets.size());
    std::iota(all.begin(), all.end(), 0U);
    return edges_of(mesh, mesh.points, all);
}

double outline_length(const TriangleMesh& mesh, const Vector& toward)
{
    double sum = 0;
    for (const ContourEdge& e : all_edges(mesh))
        if (e.is_outline(toward.normalized()))
            sum += (e.to - e.from).norm();
    return sum;
}

} // namespace

TEST_CASE("a box seen from a corner has six outline edges, its diagonals none", "[visibility]")
{
    const TriangleMesh cube = welded(box({0, 0, 0}, {10, 10, 10}));
    CHECK(all_edges(cube).size() == 18);
    CHECK(outline_length(cube, {1, 2, 3}) == Approx(60));
    // Seen along an axis the four sides are edge on: all their edges may be outlines.
    CHECK(outline_length(cube, {1, 0, 0}) > 40);
}

TEST_CASE("which way facets are wound does not move an outline", "[visibility]")
{
    TriangleMesh cube = welded(box({0, 0, 0}, {10, 10, 10}));
    for (std::size_t f = 0; f < cube.facets.size(); f += 3)
        std::swap(cube.facets[f][1], cube.facets[f][2]);
    CHECK(outline_length(cube, {1, 2, 3}) == Approx(60));
}

TEST_CASE("a facet given twice counts once, a third one at an edge makes it an outline",
          "[visibility]")
{
    TriangleMesh sheet = welded(plate(Point::Zero(), 10, 10));
    CHECK(outline_length(sheet, {1, 0, 0}) == Approx(40));
    sheet.facets.push_back({sheet.facets[0][1], sheet.facets[0][0], sheet.facets[0][2]});
    CHECK(outline_length(sheet, {1, 0, 0}) == Approx(40));
    TriangleMesh finned = welded(plate(Point::Zero(), 10, 10));
    const auto tip = static_cast<std::uint32_t>(finned.points.size());
    finned.points.emplace_back(5, 0, 0);
    // On the diagonal: the edge that both facets share.
    std::array<std::uint32_t, 2> shared{};
    std::set_intersection(finned.facets[0].begin(), finned.facets[0].end(),
                          finned.facets[1].begin(), finned.facets[1].end(), shared.begin());
    finned.facets.push_back({shared[0], shared[1], tip});
    CHECK(outline_length(finned, {1, 0.1, 0.1}) > 40 + 14);
}

TEST_CASE("a facet without area leaves its edges free", "[visibility]")
{
    TriangleMesh sheet = welded(plate(Point::Zero(), 10, 10));
    sheet.facets.push_back({0, 0, 1});
    CHECK(all_edges(sheet).size() == 5);
    CHECK(outline_length(sheet, {1, 0, 0}) == Approx(40));
    // A needle on three points of a line, in the seam between the two facets: open to both.
    TriangleMesh needled;
    needled.points = {{0, 0, 0}, {0, 10, 0}, {0, 10, 10}, {0, 5, 5}, {0, 0, 10}};
    needled.facets = {{0, 1, 2}, {0, 2, 3}, {0, 3, 4}, {3, 2, 4}};
    CHECK(outline_length(needled, {1, 0, 0}) == Approx(40 + 2 * 10 * 1.4142135623730951));
}
