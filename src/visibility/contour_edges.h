#pragma once

#include "geometry/triangle_mesh.h"

#include <span>
#include <vector>

namespace glim {

/// An edge where a mesh's outline may run, seen from some side.
struct ContourEdge {
    Point from, to;
    /// For each of the two facets beside it the unit vector across the facet whose dot with a
    /// direction tells by its sign on which side of the edge, as seen from there, the facet lies.
    /// Equal where there is one facet only: then the edge is an outline from everywhere.
    Vector first, second;
    float grain;   ///< mm, see ray_grain
    bool approved; ///< see PlacedMesh

    /// Whether what covers one side of the edge leaves the other side free, as seen along
    /// `toward`. Where a facet is seen edge on within `edge_on_sine`, it counts as leaving it free.
    bool is_outline(const Vector& toward) const
    {
        const double a = first.dot(toward);
        const double b = second.dot(toward);
        return !((a > edge_on_sine && b < -edge_on_sine) ||
                 (a < -edge_on_sine && b > edge_on_sine));
    }

    /// Rounding of unit normals: far more than theirs, far less than any facet shows.
    static constexpr double edge_on_sine = 1e-9;
};

/// The edges of the facets listed (ascending), from and to and normals filled in. A facet listed
/// twice in the mesh counts once. Edges between more than two facets, or beside a facet without
/// area, are outlines from everywhere. `points` stand for mesh.points, where the mesh is placed.
std::vector<ContourEdge> edges_of(const TriangleMesh& mesh, const std::vector<Point>& points,
                                  std::span<const std::uint32_t> facets);

} // namespace glim
