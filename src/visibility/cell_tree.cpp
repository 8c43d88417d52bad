#include "visibility/cell_tree.h"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace glim {

namespace {

/// Testing a box costs about as much as testing one cell, so small leaves pay.
constexpr LitLattice::Index cells_in_leaf = 4;

Box box_about(const LitLattice& lattice, std::span<const LitLattice::Index> cells)
{
    Box box;
    for (const LitLattice::Index c : cells)
        for (const LitLattice::Index v : lattice.cells()[c].corners)
            box.add(lattice.vertices()[v]);
    return box;
}

} // namespace

CellTree::CellTree(const LitLattice& lattice) : cells_(lattice.cells().size())
{
    std::iota(cells_.begin(), cells_.end(), 0U);
    std::vector<Point> centres;
    centres.reserve(cells_.size());
    for (const LitLattice::Cell& cell : lattice.cells())
        centres.push_back((lattice.vertices()[cell.corners[0]] +
                           lattice.vertices()[cell.corners[1]] +
                           lattice.vertices()[cell.corners[2]]) /
                          3);
    if (!cells_.empty())
        split(lattice, centres, 0, static_cast<Index>(cells_.size()));
}

void CellTree::split(const LitLattice& lattice, const std::vector<Point>& centres, Index from,
                     Index to)
{
    const Box box = box_about(lattice, std::span(cells_).subspan(from, to - from));
    const std::size_t here = nodes_.size();
    nodes_.push_back({box.centre(), box.size() / 2, from, to - from});
    if (to - from <= cells_in_leaf)
        return;
    Eigen::Index axis = 0;
    box.size().maxCoeff(&axis);
    const Index middle = from + (to - from) / 2;
    std::nth_element(cells_.begin() + from, cells_.begin() + middle, cells_.begin() + to,
                     [&](Index a, Index b) {
                         return std::tuple(centres[a][axis], a) < std::tuple(centres[b][axis], b);
                     });
    split(lattice, centres, from, middle);
    nodes_[here].first = static_cast<Index>(nodes_.size());
    nodes_[here].count = 0;
    split(lattice, centres, middle, to);
}

} // namespace glim
