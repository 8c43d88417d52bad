#pragma once

#include "visibility/cell_tree.h"
#include "visibility/contour_window.h"

namespace glim {

/// An obstacle's triangle near the lit surface.
struct NearTriangle {
    std::array<Point, 3> corners; ///< counter-clockwise seen from the outside
    float grain;                  ///< mm, see ray_grain
    bool approved, lit;           ///< see PlacedMesh
};

/// A triangle that rises above a lit facet's plane near the facet.
struct NearPair {
    LitLattice::Index triangle;
    float most_height; ///< of its corners, and its grain on top; mm
};

/// What is so near to the lit surface that it pierces it, touches it, or lies within the way that
/// rays skip. Gathered once; no direction comes into it.
class TouchZone {
public:
    using Index = LitLattice::Index;

    TouchZone(const LitLattice& lattice, Length touch);

    /// Requires: the lattice and tree of the constructor.
    void add(const LitLattice& lattice, const CellTree& tree, const SceneMesh& mesh);
    /// To be called once, after the last mesh.
    void sort_by_height();

    const NearTriangle& triangle(Index place) const { return triangles_[place]; }
    /// Those near one lit facet, the highest first.
    std::span<const NearPair> pairs_at(Index facet) const { return pairs_[facet]; }

private:
    double reach_; ///< no ray skips further, mm
    std::vector<NearTriangle> triangles_;
    std::vector<std::vector<NearPair>> pairs_; ///< one list a lit facet
};

} // namespace glim
