#pragma once

#include "geometry/polygons.h"

#include <Eigen/Geometry>

namespace glim {

/// An axis-parallel box in a plane, closed.
using PlaneBox = Eigen::AlignedBox2d;

PlaneBox box_of(const PlaneTriangle& triangle);

/// Boxes around triangles in a plane, around pairs of boxes, and so on, so that whoever asks what
/// is near need not look at all.
///
///     tree.visit(box, reach, [&](std::size_t i) { ... look at triangle i, make reach smaller ...
///     });
class TriangleTree {
public:
    explicit TriangleTree(std::span<const PlaneTriangle> triangles);

    /// Calls `look` with the place of each triangle whose box is no farther from `around` than the
    /// square root of `squared_reach`, which `look` may make smaller on the way: nearer boxes come
    /// first. Some whose own box is farther come too. The order depends on nothing but the
    /// triangles and `around`.
    template <class Look>
    void visit(const PlaneBox& around, const double& squared_reach, Look&& look) const
    {
        if (!nodes_.empty())
            visit_node(0, around, squared_reach, look);
    }

    const PlaneBox& box() const { return box_; }

private:
    /// Half of the triangles of the node above; the first child stands right behind its parent.
    struct Node {
        PlaneBox box;
        std::size_t first, last;      ///< in `order_`
        std::size_t second_child = 0; ///< 0: the triangles themselves
    };
    std::size_t build(std::span<const PlaneBox> boxes, std::size_t first, std::size_t last);

    template <class Look>
    void visit_node(std::size_t i, const PlaneBox& around, const double& squared_reach,
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
    PlaneBox box_;
};

} // namespace glim
