#include "judgement/lamp_gap.h"

#include "geometry/gap.h"

#include <algorithm>

namespace glim {

namespace {

/// The transverse vertical plane, seen from ahead of the vehicle or from behind alike: coordinates
/// are to the left and up.
class TransversePlane {
public:
    explicit TransversePlane(const Vehicle& vehicle)
        : left_(vehicle.left().vector()), up_(vehicle.up.vector())
    {
    }

    Point2 project(const Point& p) const { return {left_.dot(p), up_.dot(p)}; }

    std::vector<PlaneTriangle> project(const TriangleMesh& mesh) const
    {
        std::vector<PlaneTriangle> triangles;
        triangles.reserve(mesh.facets.size());
        for (std::size_t f = 0; f < mesh.facets.size(); ++f)
            triangles.push_back({project(mesh.corner(f, 0)), project(mesh.corner(f, 1)),
                                 project(mesh.corner(f, 2))});
        return triangles;
    }

private:
    Vector left_, up_;
};

/// A place on a facet and where it is in the plane.
struct Projected {
    Point place;
    Point2 seen;
};

/// The place along the edge from corner `i` whose projection is nearest to `p`.
Projected nearest_on_edge(const TriangleMesh& mesh, std::size_t facet, int i,
                          const PlaneTriangle& seen, const Point2& p)
{
    const int next = (i + 1) % 3;
    const Point2 along = seen[next] - seen[i];
    const double squared = along.squaredNorm();
    const double share = squared == 0 ? 0 : std::clamp(along.dot(p - seen[i]) / squared, 0.0, 1.0);
    const Point& corner = mesh.corner(facet, i);
    return {corner + share * (mesh.corner(facet, next) - corner), seen[i] + share * along};
}

/// The place on the facet whose projection is `p`, which is on none of its edges.
Point within_facet(const TriangleMesh& mesh, std::size_t facet, const PlaneTriangle& seen,
                   const Point2& p)
{
    const Point2 to_1 = seen[1] - seen[0];
    const Point2 to_2 = seen[2] - seen[0];
    const double whole = cross(to_1, to_2);
    const Point& corner = mesh.corner(facet, 0);
    return corner + cross(p - seen[0], to_2) / whole * (mesh.corner(facet, 1) - corner) +
           cross(to_1, p - seen[0]) / whole * (mesh.corner(facet, 2) - corner);
}

/// Nearer to an edge than this, a place counts as on it: then its depth is the edge's, also on a
/// facet that is a mere line in the projection.
constexpr double on_edge_mm = 1e-6;

/// The place on the facet whose projection is `p`.
Point back_on_facet(const TriangleMesh& mesh, std::size_t facet, const PlaneTriangle& seen,
                    const Point2& p)
{
    for (int i = 0; i < 3; ++i)
        if (const Projected edge = nearest_on_edge(mesh, facet, i, seen, p);
            (edge.seen - p).norm() <= on_edge_mm)
            return edge.place;
    return within_facet(mesh, facet, seen, p);
}

} // namespace

std::optional<GapBetween> edge_to_edge(const TriangleMesh& lit_a, const Direction& axis_a,
                                       const TriangleMesh& lit_b, const Direction& axis_b,
                                       const Vehicle& vehicle)
{
    const TransversePlane plane(vehicle);
    const TriangleMesh a = apparent_surface(lit_a, axis_a);
    const TriangleMesh b = apparent_surface(lit_b, axis_b);
    const std::vector<PlaneTriangle> seen_a = plane.project(a);
    const std::vector<PlaneTriangle> seen_b = plane.project(b);
    const std::optional<Gap> gap = gap_between(seen_a, seen_b);
    if (!gap)
        return std::nullopt;
    return GapBetween{gap->distance,
                      back_on_facet(a, gap->from_triangle, seen_a[gap->from_triangle], gap->from),
                      back_on_facet(b, gap->to_triangle, seen_b[gap->to_triangle], gap->to)};
}

std::optional<GapBetween> centroid_to_edge(const TriangleMesh& lit_a, const Direction& axis_a,
                                           const TriangleMesh& lit_b, const Direction& axis_b,
                                           const Vehicle& vehicle)
{
    const TransversePlane plane(vehicle);
    const TriangleMesh a = apparent_surface(lit_a, axis_a);
    const TriangleMesh b = apparent_surface(lit_b, axis_b);
    if (a.facets.empty() || b.facets.empty())
        return std::nullopt;
    const Point from = seen_along(a, axis_a).centroid;
    const std::vector<PlaneTriangle> seen_b = plane.project(b);
    const std::optional<Gap> gap = gap_between(plane.project(from), seen_b);
    return GapBetween{gap->distance, from,
                      back_on_facet(b, gap->to_triangle, seen_b[gap->to_triangle], gap->to)};
}

} // namespace glim
