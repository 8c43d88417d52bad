#pragma once

#include "geometry/components.h"
#include "geometry/triangle_mesh.h"
#include "geometry/weld.h"

namespace glim {

/// What an engineer asks of a mesh first. Nothing here is repaired: it is counted and told.
struct MeshHealth {
    std::size_t facets = 0;
    std::size_t points = 0;             ///< after welding points equal to the last bit
    std::size_t degenerate = 0;         ///< facets without area (two equal corners, or on a line)
    std::size_t duplicate = 0;          ///< facets beyond the first on the same three corners
    std::size_t boundary_edges = 0;     ///< used by one facet
    std::size_t non_manifold_edges = 0; ///< used by three or more
    std::size_t winding_conflicts = 0;  ///< edges that two facets run through the same way
    std::size_t components = 0;         ///< connected over shared corners
};

/// A facet with two equal corners has no edges to count; one whose three corners lie on a line has.
/// A duplicate has edges too, so that it makes them non-manifold. Which way round a facet runs is
/// no matter for `duplicate`. Requires: points welded (see `welded`).
MeshHealth health_of(const TriangleMesh& mesh);

/// Whether the facet has no area, as far as its coordinates can tell: two corners are equal, or the
/// third lies on the line through two, but for the rounding of the coordinates themselves.
bool is_degenerate(const TriangleMesh& mesh, std::size_t facet);

} // namespace glim
