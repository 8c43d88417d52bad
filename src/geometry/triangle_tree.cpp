#include "geometry/triangle_tree.h"

#include <algorithm>
#include <numeric>

namespace glim {

namespace {

/// Fewer are looked at faster than they are divided.
constexpr std::size_t leaf_size = 4;

} // namespace

PlaneBox box_of(const PlaneTriangle& triangle)
{
    PlaneBox box;
    for (const Point2& p : triangle)
        box.extend(p);
    return box;
}

TriangleTree::TriangleTree(std::span<const PlaneTriangle> triangles) : order_(triangles.size())
{
    std::iota(order_.begin(), order_.end(), std::size_t{0});
    std::vector<PlaneBox> boxes;
    boxes.reserve(triangles.size());
    for (const PlaneTriangle& t : triangles)
        boxes.push_back(box_of(t));
    if (triangles.empty())
        return;
    build(boxes, 0, triangles.size());
    box_ = nodes_.front().box;
}

std::size_t TriangleTree::build(std::span<const PlaneBox> boxes, std::size_t first,
                                std::size_t last)
{
    const std::size_t here = nodes_.size();
    PlaneBox box;
    for (std::size_t t = first; t < last; ++t)
        box.extend(boxes[order_[t]]);
    nodes_.push_back({box, first, last, 0});
    if (last - first <= leaf_size)
        return here;

    const int axis = box.sizes().x() >= box.sizes().y() ? 0 : 1;
    const std::size_t middle = first + (last - first) / 2;
    const auto at = [&](std::size_t place) {
        return order_.begin() + static_cast<std::ptrdiff_t>(place);
    };
    std::nth_element(at(first), at(middle), at(last), [&](std::size_t a, std::size_t b) {
        const double at_a = boxes[a].min()[axis] + boxes[a].max()[axis];
        const double at_b = boxes[b].min()[axis] + boxes[b].max()[axis];
        return at_a != at_b ? at_a < at_b : a < b;
    });
    build(boxes, first, middle);
    const std::size_t second = build(boxes, middle, last);
    nodes_[here].second_child = second;
    return here;
}

} // namespace glim
