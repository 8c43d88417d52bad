#pragma once

#include "geometry/box_tree.h"
#include "geometry/polygons.h"

namespace glim {

/// An axis-parallel box in a plane, closed.
using PlaneBox = Eigen::AlignedBox2d;

PlaneBox box_of(const PlaneTriangle& triangle);

/// Boxes around triangles in a plane.
///
///     tree.visit(box, reach, [&](std::size_t i) { ... look at triangle i, make reach smaller ...
///     });
class TriangleTree : public BoxTree<2> {
public:
    explicit TriangleTree(std::span<const PlaneTriangle> triangles);
};

} // namespace glim
