#include "geometry/triangle_tree.h"

namespace glim {

namespace {

std::vector<PlaneBox> boxes_of(std::span<const PlaneTriangle> triangles)
{
    std::vector<PlaneBox> boxes;
    boxes.reserve(triangles.size());
    for (const PlaneTriangle& t : triangles)
        boxes.push_back(box_of(t));
    return boxes;
}

} // namespace

PlaneBox box_of(const PlaneTriangle& triangle)
{
    PlaneBox box;
    for (const Point2& p : triangle)
        box.extend(p);
    return box;
}

TriangleTree::TriangleTree(std::span<const PlaneTriangle> triangles)
    : BoxTree<2>(boxes_of(triangles))
{
}

} // namespace glim
