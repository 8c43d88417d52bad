#include "geometry/trim.h"

#include "geometry/inset.h"
#include "geometry/triangulate.h"
#include "geometry/weld.h"

#include <Eigen/Geometry>

#include <algorithm>

namespace glim {

namespace {

using SpacePolygon = std::vector<Point>; ///< convex, in space

/// What a cut leaves by rounding alone is smaller than this, mm2.
constexpr double least_piece_mm2 = 1e-9;

/// The points p with normal . p >= offset.
struct HalfSpace {
    Vector normal;
    double offset;
};
using ConvexBody = std::vector<HalfSpace>;

SpacePolygon clipped(const SpacePolygon& polygon, const HalfSpace& half)
{
    SpacePolygon kept;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Point& p = polygon[i];
        const Point& next = polygon[(i + 1) % polygon.size()];
        const double side = half.normal.dot(p) - half.offset;
        const double next_side = half.normal.dot(next) - half.offset;
        if (side >= 0)
            kept.push_back(p);
        if ((side < 0) != (next_side < 0))
            kept.emplace_back(p + side / (side - next_side) * (next - p));
    }
    return kept;
}

double area_of(const SpacePolygon& polygon)
{
    Vector twice = Vector::Zero();
    for (std::size_t i = 2; i < polygon.size(); ++i)
        twice += (polygon[i - 1] - polygon[0]).cross(polygon[i] - polygon[0]);
    return twice.norm() / 2;
}

void add(TriangleMesh& mesh, const SpacePolygon& polygon)
{
    const auto first = static_cast<std::uint32_t>(mesh.points.size());
    mesh.points.insert(mesh.points.end(), polygon.begin(), polygon.end());
    for (std::uint32_t i = 2; i < polygon.size(); ++i)
        mesh.facets.push_back({first, first + i - 1, first + i});
}

/// The parts within the bodies, which do not overlap.
TriangleMesh part_within(const TriangleMesh& mesh, const std::vector<ConvexBody>& bodies)
{
    TriangleMesh left;
    for (std::size_t f = 0; f < mesh.facets.size(); ++f)
        for (const ConvexBody& body : bodies) {
            SpacePolygon piece = {mesh.corner(f, 0), mesh.corner(f, 1), mesh.corner(f, 2)};
            for (std::size_t i = 0; i < body.size() && !piece.empty(); ++i)
                piece = clipped(piece, body[i]);
            if (area_of(piece) > least_piece_mm2)
                add(left, piece);
        }
    return welded(left);
}

ConvexBody body_of(const Box& box)
{
    ConvexBody body;
    for (int axis = 0; axis < 3; ++axis) {
        body.push_back({Vector::Unit(axis), box.least[axis]});
        body.push_back({-Vector::Unit(axis), -box.most[axis]});
    }
    return body;
}

/// A counter-clockwise convex polygon of the view plane, drawn out along the view without end.
ConvexBody prism_of(std::span<const Point2> polygon, const ViewPlane& view)
{
    ConvexBody prism;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Point2& from = polygon[i];
        const Point2 along = polygon[(i + 1) % polygon.size()] - from;
        const Point2 inward(-along.y(), along.x());
        prism.push_back({inward.x() * view.across + inward.y() * view.up, inward.dot(from)});
    }
    return prism;
}

/// The inside of the curve, as prisms of triangles. Nothing if it crosses itself or has no inside.
std::optional<std::vector<ConvexBody>> prisms_of(const std::vector<Point>& curve,
                                                 const Direction& axis)
{
    const ViewPlane view(axis);
    std::vector<Point> outline;
    for (const Point& p : curve) {
        const Point2 flat = view.project(p);
        outline.emplace_back(flat.x(), flat.y(), 0);
    }
    const std::optional<std::vector<Facet>> facets = triangulated(outline);
    if (!facets)
        return std::nullopt;
    std::vector<ConvexBody> prisms;
    for (const Facet& f : *facets) {
        std::array<Point2, 3> corners = {outline[f[0]].head<2>(), outline[f[1]].head<2>(),
                                         outline[f[2]].head<2>()};
        const Point2 a = corners[1] - corners[0], b = corners[2] - corners[0];
        const double twice_area = a.x() * b.y() - a.y() * b.x();
        if (twice_area < 0)
            std::swap(corners[1], corners[2]);
        if (twice_area != 0)
            prisms.push_back(prism_of(corners, view));
    }
    return prisms.empty() ? std::nullopt : std::optional(std::move(prisms));
}

} // namespace

TriangleMesh part_within(const TriangleMesh& mesh, std::span<const Point> outline,
                         const Direction& axis)
{
    const ViewPlane view(axis);
    std::vector<Point2> corners;
    for (const Point& p : outline)
        corners.push_back(view.project(p));
    double twice_area = 0;
    for (std::size_t i = 1; i + 1 < corners.size(); ++i)
        twice_area += cross(corners[i] - corners[0], corners[i + 1] - corners[0]);
    if (twice_area < 0)
        std::reverse(corners.begin(), corners.end());
    return part_within(mesh, {prism_of(corners, view)});
}

std::optional<TriangleMesh> trimmed(const TriangleMesh& mesh, const Trim& trim,
                                    const Direction& axis)
{
    TriangleMesh left = trim.inset ? inset(mesh, *trim.inset) : mesh;
    if (!trim.curve.empty()) {
        const std::optional<std::vector<ConvexBody>> prisms = prisms_of(trim.curve, axis);
        if (!prisms)
            return std::nullopt;
        left = part_within(left, *prisms);
    }
    if (trim.box)
        left = part_within(left, {body_of(*trim.box)});
    return left;
}

} // namespace glim
