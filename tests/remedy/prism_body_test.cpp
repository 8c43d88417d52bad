#include "remedy/prism_body.h"

#include "geometry/mesh_health.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

PrismBody square_prism()
{
    PrismBody body;
    body.plan.points = {{0, 0, 0}, {10, 0, 0}, {10, 10, 0}, {0, 10, 0}};
    body.plan.facets = {{0, 1, 2}, {0, 2, 3}};
    body.bottom_mm = {-1, -1, -1, -1};
    body.top_mm = {2, 2, 2, 2};
    return body;
}

void check_closed(const TriangleMesh& mesh)
{
    const MeshHealth health = health_of(mesh);
    CHECK(health.boundary_edges == 0);
    CHECK(health.non_manifold_edges == 0);
    CHECK(health.winding_conflicts == 0);
}

} // namespace

TEST_CASE("a prism is closed and has its volume", "[remedy]")
{
    const TriangleMesh mesh = closed_mesh(square_prism());
    check_closed(mesh);
    CHECK(mesh.facets.size() == 12);
    CHECK(in_mm3(enclosed_volume(mesh)) == Approx(300));
}

TEST_CASE("prisms that touch in a corner have a corner each", "[remedy]")
{
    PrismBody body = square_prism();
    body.plan.facets = {{0, 1, 2}};
    body.plan.points.insert(body.plan.points.end(), {{20, 10, 0}, {20, 20, 0}});
    body.plan.facets.push_back({2, 4, 5});
    body.bottom_mm.resize(6, -1);
    body.top_mm.resize(6, 2);
    const TriangleMesh mesh = closed_mesh(body);
    check_closed(mesh);
    CHECK(mesh.points.size() == 12);
    CHECK(health_of(mesh).components == 2);
}

TEST_CASE("where top and bottom meet, walls keep a height", "[remedy]")
{
    PrismBody body = square_prism();
    body.top_mm = {-1, 2, 2, -5};
    const TriangleMesh mesh = closed_mesh(body);
    check_closed(mesh);
    CHECK(in_mm3(enclosed_volume(mesh)) > 0);
}
