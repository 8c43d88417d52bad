#include "geometry/mesh_health.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

/// Eight corners, twelve facets that face outwards.
TriangleMesh cube()
{
    TriangleMesh mesh;
    for (int i = 0; i < 8; ++i)
        mesh.points.emplace_back(i & 1, (i >> 1) & 1, (i >> 2) & 1);
    mesh.facets = {{0, 2, 3}, {0, 3, 1}, {4, 5, 7}, {4, 7, 6}, {0, 1, 5}, {0, 5, 4},
                   {2, 6, 7}, {2, 7, 3}, {0, 4, 6}, {0, 6, 2}, {1, 3, 7}, {1, 7, 5}};
    return mesh;
}

/// A flat sheet of n x n squares, each cut into two facets.
TriangleMesh sheet(std::uint32_t n)
{
    TriangleMesh mesh;
    for (std::uint32_t i = 0; i <= n; ++i)
        for (std::uint32_t j = 0; j <= n; ++j)
            mesh.points.emplace_back(i, j, 0);
    for (std::uint32_t i = 0; i < n; ++i)
        for (std::uint32_t j = 0; j < n; ++j) {
            const std::uint32_t a = i * (n + 1) + j, b = a + n + 1;
            mesh.facets.push_back({a, b, b + 1});
            mesh.facets.push_back({a, b + 1, a + 1});
        }
    return mesh;
}

} // namespace

TEST_CASE("a closed, well wound body has nothing to tell of", "[geometry]")
{
    const MeshHealth health = health_of(cube());
    CHECK(health.facets == 12);
    CHECK(health.points == 8);
    CHECK(health.degenerate == 0);
    CHECK(health.duplicate == 0);
    CHECK(health.boundary_edges == 0);
    CHECK(health.non_manifold_edges == 0);
    CHECK(health.winding_conflicts == 0);
    CHECK(health.components == 1);
}

TEST_CASE("a sheet has its rim as boundary", "[geometry]")
{
    const MeshHealth health = health_of(sheet(17));
    CHECK(health.boundary_edges == 4 * 17);
    CHECK(health.non_manifold_edges == 0);
    CHECK(health.winding_conflicts == 0);
}

TEST_CASE("a facet taken out leaves three boundary edges", "[geometry]")
{
    TriangleMesh mesh = cube();
    mesh.facets.pop_back();
    CHECK(health_of(mesh).boundary_edges == 3);
}

TEST_CASE("a facet turned over has a conflict at each of its edges", "[geometry]")
{
    TriangleMesh mesh = cube();
    std::swap(mesh.facets[5][1], mesh.facets[5][2]);
    CHECK(health_of(mesh).winding_conflicts == 3);
    for (Facet& f : mesh.facets)
        std::swap(f[1], f[2]);
    CHECK(health_of(mesh).winding_conflicts == 3);
}

TEST_CASE("a facet that is there again counts as duplicate, whichever way it runs", "[geometry]")
{
    TriangleMesh mesh = cube();
    const Facet first = mesh.facets[0];
    mesh.facets.push_back({first[1], first[2], first[0]});
    mesh.facets.push_back({first[1], first[0], first[2]});
    const MeshHealth health = health_of(mesh);
    CHECK(health.duplicate == 2);
    CHECK(health.non_manifold_edges == 3);
    CHECK(health.winding_conflicts == 0);
}

TEST_CASE("a fin on an edge makes it non-manifold", "[geometry]")
{
    TriangleMesh mesh = cube();
    mesh.points.emplace_back(5, 5, 5);
    mesh.facets.push_back({0, 1, 8});
    const MeshHealth health = health_of(mesh);
    CHECK(health.non_manifold_edges == 1);
    CHECK(health.boundary_edges == 2);
    CHECK(health.components == 1);
}

TEST_CASE("facets without area are counted, with equal corners or on a line", "[geometry]")
{
    TriangleMesh mesh{{{0, 0, 0}, {0.1, 0.1, 0.1}, {0.3, 0.3, 0.3}, {0, 1, 0}},
                      {{0, 0, 3}, {3, 3, 3}, {0, 1, 2}, {0, 2, 3}}};
    const MeshHealth health = health_of(mesh);
    CHECK(health.degenerate == 3);
    CHECK(health.facets == 4);
    CHECK(is_degenerate(mesh, 2));
    CHECK_FALSE(is_degenerate(mesh, 3));
}

TEST_CASE("a needle of a nanometre is a facet still, far from the origin", "[geometry]")
{
    const TriangleMesh needle{{{4000, 0, 0}, {4010, 0, 0}, {4005, 1e-6, 0}}, {{0, 1, 2}}};
    CHECK_FALSE(is_degenerate(needle, 0));
    // Rounding of the coordinates alone: a unit in the last place of 4000 is 4.5e-13.
    const TriangleMesh line{{{4000, 1, 0}, {4010, 1, 0}, {4005, 1 + 4.5e-13, 0}}, {{0, 1, 2}}};
    CHECK(is_degenerate(line, 0));
}

TEST_CASE("a facet with two equal corners has no edge that counts", "[geometry]")
{
    TriangleMesh mesh = cube();
    mesh.facets.push_back({0, 0, 1});
    const MeshHealth health = health_of(mesh);
    CHECK(health.non_manifold_edges == 0);
    CHECK(health.boundary_edges == 0);
}

TEST_CASE("two bodies that share no corner are two components", "[geometry]")
{
    TriangleMesh mesh = cube();
    const TriangleMesh other = cube();
    for (const Point& p : other.points)
        mesh.points.push_back(p + Vector(10, 0, 0));
    for (const Facet& f : other.facets)
        mesh.facets.push_back({f[0] + 8, f[1] + 8, f[2] + 8});
    CHECK(health_of(mesh).components == 2);
}

TEST_CASE("nothing can be wrong with an empty mesh", "[geometry]")
{
    const MeshHealth health = health_of({});
    CHECK(health.facets == 0);
    CHECK(health.components == 0);
    CHECK(health.boundary_edges == 0);
}
