#include "remedy/cutter_body.h"

#include "geometry/edge_uses.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace glim;

namespace {

/// A plate across x, n x n squares of 10 mm, its outside towards -x, pushed along +x by what
/// `depth` says of each grid point.
template <class Depth>
ReshapedSurface pushed_plate(int n, const Depth& depth)
{
    ReshapedSurface surface;
    surface.push = Direction::x();
    for (int j = 0; j <= n; ++j)
        for (int i = 0; i <= n; ++i) {
            const double deep = depth(i, j);
            surface.mesh.points.emplace_back(deep, 10.0 * i, 10.0 * j);
            surface.depths.push_back(millimetres(deep));
        }
    const auto at = [&](int i, int j) { return static_cast<std::uint32_t>(j * (n + 1) + i); };
    for (int j = 0; j < n; ++j)
        for (int i = 0; i < n; ++i) {
            surface.mesh.facets.push_back({at(i, j), at(i + 1, j + 1), at(i + 1, j)});
            surface.mesh.facets.push_back({at(i, j), at(i, j + 1), at(i + 1, j + 1)});
        }
    return surface;
}

/// Every edge is run along once either way.
bool is_closed(const TriangleMesh& mesh)
{
    const std::vector<EdgeUse> uses = edge_uses(mesh);
    for (std::size_t i = 0; i < uses.size(); i += 2)
        if (i + 1 == uses.size() || !uses[i].same_edge(uses[i + 1]) ||
            uses[i].forward == uses[i + 1].forward)
            return false;
    return !uses.empty();
}

} // namespace

TEST_CASE("the body to be cut away is closed, and as large as depth times area", "[remedy]")
{
    // One grid point 3 mm deep amid others: a pyramid over six facets, area 300 mm2.
    const TriangleMesh body =
        cutter_body(pushed_plate(4, [](int i, int j) { return i == 2 && j == 2 ? 3.0 : 0.0; }));
    CHECK(is_closed(body));
    CHECK(enclosed_mm3(body) == Approx(300 * 3.0 / 3));
}

TEST_CASE("where a rim moves, walls close the body", "[remedy]")
{
    const TriangleMesh body = cutter_body(pushed_plate(4, [](int i, int) { return i; }));
    CHECK(is_closed(body));
    CHECK(enclosed_mm3(body) == Approx(40 * 40 * 4.0 / 2));
}

TEST_CASE("the body's outside is outward, whichever way the surface is wound", "[remedy]")
{
    ReshapedSurface surface = pushed_plate(4, [](int i, int) { return i; });
    surface.mesh = turned_over(std::move(surface.mesh));
    const TriangleMesh body = cutter_body(surface);
    CHECK(is_closed(body));
    CHECK(enclosed_mm3(body) > 0);
}

TEST_CASE("what was not pushed leaves nothing to cut", "[remedy]")
{
    CHECK(cutter_body(pushed_plate(2, [](int, int) { return 0.0005; })).facets.empty());
}
