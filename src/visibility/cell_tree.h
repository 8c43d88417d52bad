#pragma once

#include "visibility/lit_lattice.h"

#include <array>
#include <cassert>

namespace glim {

/// Boxes about the cells of a lattice, in a tree: made once, asked along any direction.
class CellTree {
public:
    using Index = LitLattice::Index;

    struct Node {
        Point centre;
        Vector half; ///< from the centre to the box's sides; not negative
        Index first; ///< a leaf's first cell in the tree's order; else the right child
        Index count; ///< cells of a leaf; 0 else: the left child is the next node
    };

    explicit CellTree(const LitLattice& lattice);

    /// Calls `act(cell)` for each cell of every leaf whose box and whose ancestors' boxes
    /// `meets(node)`, in an order that the lattice alone decides.
    template <class Meets, class Act>
    void visit(const Meets& meets, const Act& act) const;

    /// About everything. Requires: the lattice has cells.
    const Node& root() const { return nodes_.front(); }
    bool empty() const { return nodes_.empty(); }

private:
    void split(const LitLattice& lattice, const std::vector<Point>& centres, Index from, Index to);

    std::vector<Node> nodes_;
    std::vector<Index> cells_;
};

template <class Meets, class Act>
void CellTree::visit(const Meets& meets, const Act& act) const
{
    // Halving 2^32 cells leaves no more right children waiting than this.
    std::array<Index, 33> waiting{};
    std::size_t count = 0;
    if (!nodes_.empty())
        waiting[count++] = 0;
    while (count > 0) {
        Index at = waiting[--count];
        while (meets(nodes_[at])) {
            const Node& node = nodes_[at];
            if (node.count > 0) {
                for (Index i = node.first; i < node.first + node.count; ++i)
                    act(cells_[i]);
                break;
            }
            assert(count < waiting.size());
            waiting[count++] = node.first;
            ++at;
        }
    }
}

} // namespace glim
