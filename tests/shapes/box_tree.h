#pragma once

#include "geometry/direction.h"
#include "geometry/triangle_mesh.h"

#include <memory>

namespace glim::shapes {

/// A second opinion on rays: CGAL's AABB tree over the same triangles, in double.
class BoxTree {
public:
    explicit BoxTree(const std::vector<TriangleMesh>& meshes);
    ~BoxTree();

    /// Whether anything lies within 10 m of `from` along `toward`.
    bool blocks(const Point& from, const Direction& toward) const;

private:
    struct Tree;
    std::unique_ptr<Tree> tree_;
};

} // namespace glim::shapes
