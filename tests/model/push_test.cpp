#include "model/push.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

/// 100 by 50 mm at x = 0, looking towards -x.
Surface wall()
{
    Surface surface;
    surface.mesh.points = {{0, 0, 0}, {0, 0, 50}, {0, 100, 50}, {0, 100, 0}};
    surface.mesh.facets = {{0, 1, 2}, {0, 2, 3}};
    surface.reshape = Reshape{};
    return surface;
}

} // namespace

TEST_CASE("a surface that does not say is pushed against its facets' normals", "[model]")
{
    CHECK((push_of(wall())->vector() - Vector(1, 0, 0)).norm() < 1e-12);
}

TEST_CASE("the push that a surface says counts before its normals", "[model]")
{
    Surface surface = wall();
    surface.reshape->push = Direction::along({1, 0, -1});
    CHECK((push_of(surface)->vector() - Vector(1, 0, -1).normalized()).norm() < 1e-12);
}

TEST_CASE("facets that look both ways do not tell which way is in", "[model]")
{
    Surface surface = wall();
    surface.mesh.facets = {{0, 1, 2}, {0, 2, 1}};
    CHECK_FALSE(push_of(surface));
}

TEST_CASE("a plane's share across a push is the sine of the angle between them", "[model]")
{
    CHECK(share_across(wall().mesh, Direction::x()) == Approx(1));
    CHECK(share_across(wall().mesh, Direction::along({1, 1, 0})) == Approx(std::sqrt(0.5)));
    CHECK(share_across(wall().mesh, Direction::y()) == 0);
    CHECK(share_across(TriangleMesh{}, Direction::y()) == 0);
}
