#pragma once

#include "geometry/triangle_mesh.h"

namespace glim {

/// One facet's side of an edge.
struct EdgeUse {
    std::uint32_t from, to; ///< places of its ends among the points; from < to
    std::uint32_t facet;
    bool forward; ///< the facet runs from `from` to `to`

    bool same_edge(const EdgeUse& other) const { return from == other.from && to == other.to; }
};

/// Every side of every facet, those of the same edge behind each other: by `from`, `to`, facet. A
/// facet with two equal corners has no edges. Requires: points welded (see `welded`), or facets
/// that should share an edge do not.
std::vector<EdgeUse> edge_uses(const TriangleMesh& mesh);

} // namespace glim
