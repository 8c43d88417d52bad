#include "geometry/point_normals.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace glim;

namespace {

/// Point 4 a + 2 b + c stands at x = 30 a, y = 20 b, z = 10 c.
TriangleMesh box()
{
    TriangleMesh mesh;
    for (const double x : {0.0, 30.0})
        for (const double y : {0.0, 20.0})
            for (const double z : {0.0, 10.0})
                mesh.points.emplace_back(x, y, z);
    mesh.facets = {{0, 1, 3}, {0, 3, 2}, {4, 6, 7}, {4, 7, 5}, {0, 4, 5}, {0, 5, 1},
                   {2, 3, 7}, {2, 7, 6}, {0, 2, 6}, {0, 6, 4}, {1, 5, 7}, {1, 7, 3}};
    return mesh;
}

} // namespace

// A box's corner has a right angle of each of three faces, however these are cut into triangles.
TEST_CASE("the normal at a box's corner leans to all three faces alike", "[geometry]")
{
    const TriangleMesh mesh = box();
    const std::vector<Vector> normals = point_normals(mesh);
    for (std::size_t p = 0; p < mesh.points.size(); ++p)
        for (int axis = 0; axis < 3; ++axis)
            CHECK(normals[p][axis] == Approx((mesh.points[p][axis] > 0 ? 1 : -1) / std::sqrt(3.0)));
}

TEST_CASE("a point of no facet and of degenerate facets has no normal", "[geometry]")
{
    const TriangleMesh mesh{{{0, 0, 0}, {1, 0, 0}, {2, 0, 0}, {9, 9, 9}}, {{0, 1, 2}}};
    for (const Vector& normal : point_normals(mesh))
        CHECK(normal.isZero(0));
}
