#pragma once

#include "geometry/direction.h"
#include "geometry/triangle_mesh.h"

#include <cstdint>
#include <vector>

namespace glim {

/// A mesh with a number beside each facet, which the facet's parts inherit.
struct NumberedMesh {
    TriangleMesh mesh;
    std::vector<std::uint32_t> of; ///< one a facet
};

/// How long an edge counts: its length across the push, and a quarter of that along it. Facets that
/// stand along the push are divided coarser, and others have their good shapes where it matters for
/// a field of depths, seen along the push.
double counted_length(const Vector& edge, const Direction& push);

/// Of the facet's edges that counts longest, mm.
double longest_edge(const TriangleMesh& mesh, std::size_t facet, const Direction& push);

/// Halves the edge that counts longest of every facet marked (one byte a facet, 0 or 1), and
/// whatever else has to be so that no facet keeps an edge that is halved. New points lie on the old
/// edges and come behind the old ones; the shape is what it was, without gaps, whatever the mesh:
/// an edge of three facets is halved in all three. Angles do not degenerate, however often it is
/// done. Requires: points welded, or edges that should be common are not.
NumberedMesh with_halved_edges(const NumberedMesh& numbered,
                               const std::vector<std::uint8_t>& marked, const Direction& push);

} // namespace glim
