#include "geometry/box_tree.h"

#include <algorithm>
#include <numeric>

namespace glim {

namespace {

/// Fewer are looked at faster than they are divided.
constexpr std::size_t leaf_size = 4;

} // namespace

template <int dim>
BoxTree<dim>::BoxTree(std::span<const BoxAround> boxes) : order_(boxes.size())
{
    std::iota(order_.begin(), order_.end(), std::size_t{0});
    if (boxes.empty())
        return;
    build(boxes, 0, boxes.size());
    box_ = nodes_.front().box;
}

template <int dim>
std::size_t BoxTree<dim>::build(std::span<const BoxAround> boxes, std::size_t first,
                                std::size_t last)
{
    const std::size_t here = nodes_.size();
    BoxAround box;
    for (std::size_t t = first; t < last; ++t)
        box.extend(boxes[order_[t]]);
    nodes_.push_back({box, first, last, 0});
    if (last - first <= leaf_size)
        return here;

    Eigen::Index axis = 0;
    box.sizes().maxCoeff(&axis);
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

template class BoxTree<2>;
template class BoxTree<3>;

} // namespace glim
