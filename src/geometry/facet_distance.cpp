#include "geometry/facet_distance.h"

#include <Eigen/Geometry>

#include <algorithm>

namespace glim {

namespace {

Point nearest_on_segment(const Point& a, const Point& b, const Point& p)
{
    const Vector along = b - a;
    const double squared_length = along.squaredNorm();
    if (squared_length == 0)
        return a;
    return a + std::clamp(along.dot(p - a) / squared_length, 0.0, 1.0) * along;
}

/// Whether the foot of `p` on the plane of the triangle lies within it: on the inner side of all
/// three edges.
bool stands_over(const std::array<Point, 3>& c, const Vector& normal, const Point& p)
{
    for (int i = 0; i < 3; ++i)
        if (normal.dot((c[(i + 1) % 3] - c[i]).cross(p - c[i])) < 0)
            return false;
    return true;
}

} // namespace

Point nearest_on_facet(const TriangleMesh& mesh, std::size_t facet, const Point& p)
{
    const std::array<Point, 3> c = {mesh.corner(facet, 0), mesh.corner(facet, 1),
                                    mesh.corner(facet, 2)};
    const Vector normal = (c[1] - c[0]).cross(c[2] - c[0]);
    const double squared = normal.squaredNorm();
    if (squared > 0 && stands_over(c, normal, p))
        return p - normal.dot(p - c[0]) / squared * normal;
    Point nearest = nearest_on_segment(c[0], c[1], p);
    for (int i = 1; i < 3; ++i)
        if (const Point other = nearest_on_segment(c[i], c[(i + 1) % 3], p);
            (other - p).squaredNorm() < (nearest - p).squaredNorm())
            nearest = other;
    return nearest;
}

Length distance_to_facet(const TriangleMesh& mesh, std::size_t facet, const Point& p)
{
    return millimetres((nearest_on_facet(mesh, facet, p) - p).norm());
}

} // namespace glim
