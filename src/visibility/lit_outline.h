#pragma once

#include "geometry/direction.h"
#include "geometry/triangle_mesh.h"

#include <optional>
#include <vector>

namespace glim {

/// Where a lit surface ends for the eye: the edges of facets that face it, beyond which no facet
/// goes on that faces it too.
class LitOutline {
public:
    /// Requires: points welded (see `welded`), or neighbours are not known as such.
    explicit LitOutline(const TriangleMesh& lit);

    /// The outline's length in the view plane. An edge between any number of facets counts once,
    /// unless exactly two of them face the eye.
    Length toward(const Direction& toward) const;

private:
    struct Edge {
        Vector along;        ///< from end to end, mm
        std::uint32_t first; ///< its facets' places in facets_at_edges_
        std::uint32_t count;
    };
    std::vector<Vector> normals_; ///< of the facets; any length
    std::vector<Edge> edges_;
    std::vector<std::uint32_t> facets_at_edges_;
};

/// The same asked once.
Length lit_outline(const TriangleMesh& lit, const Direction& toward);

} // namespace glim
