#pragma once

#include "geometry/box_tree.h"
#include "geometry/triangle_mesh.h"

#include <limits>
#include <optional>

namespace glim {

/// The facet of a mesh that is nearest to a point.
struct NearestFacet {
    std::size_t facet = 0; ///< the first of several
    Point point;           ///< of the facet, edges and corners included
    Length distance;
};

/// Boxes around the facets of a mesh, which has to outlive it.
class FacetTree {
public:
    explicit FacetTree(const TriangleMesh& mesh);

    /// Nothing where no facet is as near as `reach`.
    std::optional<NearestFacet>
    nearest(const Point& p,
            Length reach = millimetres(std::numeric_limits<double>::infinity())) const;

private:
    const TriangleMesh* mesh_;
    BoxTree<3> tree_;
};

} // namespace glim
