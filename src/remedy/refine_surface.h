#pragma once

#include "geometry/triangle_mesh.h"

#include <cstdint>
#include <vector>

namespace glim {

/// A mesh with a number beside each facet, which the facet's parts inherit.
struct NumberedMesh {
    TriangleMesh mesh;
    std::vector<std::uint32_t> of; ///< one a facet
};

/// The length of the facet's longest edge, mm.
double longest_edge(const TriangleMesh& mesh, std::size_t facet);

/// Halves every edge longer than `longest_mm` of the facets marked (one byte a facet, 0 or 1), and
/// divides whatever facets stand on a halved edge. New points lie on the old edges and come behind
/// the old ones; the shape is what it was, without gaps, whatever the mesh: an edge of three facets
/// is halved in all three. Requires: points welded, or edges that should be common are not.
NumberedMesh with_halved_edges(const NumberedMesh& numbered,
                               const std::vector<std::uint8_t>& marked, double longest_mm);

} // namespace glim
