#pragma once

#include <Eigen/Geometry>

#include <cstddef>
#include <span>
#include <vector>

namespace glim {

/// Boxes around things, around pairs of boxes, and so on, so that whoever asks what is near need
/// not look at all. In a plane or in space: `dim` is 2 or 3.
template <int dim>
class BoxTree {
public:
    using BoxAround = Eigen::AlignedBox<double, dim>;

    explicit BoxTree(std::span<const BoxAround> boxes);

    /// Calls `look` with the place of each box that is no farther from `around` than the square
    /// root of `squared_reach`, which `look` may make smaller on the way: nearer ones come first.
    /// Some that are farther come too. The order depends on nothing but the boxes and `around`.
    template <class Look>
    void visit(const BoxAround& around, const double& squared_reach, Look&& look) const
    {
        if (!nodes_.empty())
            visit_node(0, around, squared_reach, look);
    }

    /// Around all of them.
    const BoxAround& box() const { return box_; }

private:
    /// Half of the things of the node above; the first child stands right behind its parent.
    struct Node {
        BoxAround box;
        std::size_t first, last;      ///< in `order_`
        std::size_t second_child = 0; ///< 0: the things themselves
    };
    std::size_t build(std::span<const BoxAround> boxes, std::size_t first, std::size_t last);

    template <class Look>
    void visit_node(std::size_t i, const BoxAround& around, const double& squared_reach,
                    Look& look) const
    {
        const Node& node = nodes_[i];
        if (node.box.squaredExteriorDistance(around) > squared_reach)
            return;
        if (node.second_child == 0) {
            for (std::size_t t = node.first; t < node.last; ++t)
                look(order_[t]);
            return;
        }
        const std::size_t a = i + 1;
        const std::size_t b = node.second_child;
        const bool swap = nodes_[b].box.squaredExteriorDistance(around) <
                          nodes_[a].box.squaredExteriorDistance(around);
        visit_node(swap ? b : a, around, squared_reach, look);
        visit_node(swap ? a : b, around, squared_reach, look);
    }

    std::vector<std::size_t> order_;
    std::vector<Node> nodes_;
    BoxAround box_;
};

} // namespace glim
