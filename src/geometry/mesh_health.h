#pragma once

#include "geometry/triangle_mesh.h"

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

/// Requires: points welded (see `welded`).
MeshHealth health_of(const TriangleMesh& mesh);

/// The same facets on points that are distinct to the last bit (-0 counts as 0); points keep the
/// order of their first use. Facets are kept, degenerate ones too.
TriangleMesh welded(const TriangleMesh& mesh);

/// For each facet the number of its connected component, over shared corners, counted from 0 in
/// the order of the components' first facets.
std::vector<std::uint32_t> components_of(const TriangleMesh& mesh);

} // namespace glim
