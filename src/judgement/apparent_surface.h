#pragma once

#include "geometry/direction.h"
#include "geometry/triangle_mesh.h"

namespace glim {

/// Facets whose normal has a smaller cosine with the axis are seen edge on: rounding alone may
/// leave so much on walls that run along the axis, and they would put a lamp's end at their foot.
inline constexpr double edge_on_cosine = 1e-9;

/// What a lamp shows along its reference axis, in place, with nothing in the way: the lit facets
/// that face the axis, in their order. A fold of the surface behind another stays in.
TriangleMesh apparent_surface(const TriangleMesh& lit, const Direction& axis);

/// Of an apparent surface, as seen along its axis: folds behind each other both count.
struct SeenAlong {
    Point centroid; ///< of the facets in place, each weighed by its area as seen
    Area area;
};

/// Requires: as `apparent_surface` makes it for this axis; not empty.
SeenAlong seen_along(const TriangleMesh& apparent, const Direction& axis);

} // namespace glim
