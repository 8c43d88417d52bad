#pragma once

#include "visibility/lamp_view.h"

namespace glim {

/// How far bodies may stand from where they were drawn.
struct Nearby {
    /// So far at most anything that blocks moves against the lit face, as seen by the eye.
    Length reach;
    /// By so much at most the lit face turns.
    Angle turn;
};

/// How closely rims are found along the edges of a lattice.
enum class RimSearch {
    quick, ///< each edge's by itself off by some tenths of a millimetre, which averages out
    close  ///< for what is compared with
};

/// One lamp toward one direction, prepared to be looked at over and over while the lit face and
/// what stands before it move a little.
///
/// Only where a shadow's rim, on the lit face or beside it, or something that comes near the lit
/// face is within reach of the move are corners asked again; the others keep the answer that they
/// had as drawn. So the area is that of visible_toward() with the same lattice, as long as moves
/// keep to what they are said to be, up to how rims are found. Things so thin that the fine lattice
/// misses them as drawn may be missed near them too.
class NearLook {
public:
    /// Needed while it is made, not afterwards.
    struct Prepared {
        const LampView& fine;    ///< tells where rims run; as drawn
        const LampView& coarse;  ///< with the lattice that is looked at
        const Caster& strangers; ///< what of `all` is not the lit face itself
    };
    NearLook(const Prepared& lamp, const Direction& toward, const Nearby& nearby);

    /// In the frame of the lit face: `toward` and `obstacles` as they stand to it then; `reach` as
    /// in Nearby, for this move, no longer than that. Pure.
    Area visible(const Direction& toward, const Caster& obstacles, Length reach,
                 RimSearch search = RimSearch::quick) const;

    /// How many corners are asked for a move with that reach, not counting those along rims.
    std::size_t corners(Length reach) const;

private:
    using Index = std::uint32_t;

    struct FacetsAt {
        Index first, count; ///< in `facets_at_`
    };
    struct Edge {
        std::array<Index, 2> ends;
    };
    struct Cell {
        std::array<Index, 3> corners, edges;
        Index facet;
        double area_mm2;
    };
    struct Work;
    struct Doubts;

    void keep_cells(const LitLattice& lattice, const Doubts& doubts);
    void keep_corners(const LitLattice& lattice, const Doubts& doubts);
    float skip_at(Index corner, const std::vector<double>& cosines) const;
    void ask_corners(Work& work, const Direction& toward, const Caster& obstacles) const;
    void find_rims(Work& work, const Direction& toward, const Caster& obstacles) const;
    double seen_mm2(const Work& work, const Cell& cell) const;

    Direction drawn_toward_;
    Length touch_;
    int rounds_ = 0;
    std::vector<Cell> cells_; ///< by doubt, the most doubtful first
    std::vector<float> cell_doubts_;
    std::vector<Vector>
        lit_from_;              ///< area vectors of the cells from there on that are lit as drawn
    std::vector<Point> points_; ///< of corners, by doubt
    std::vector<float> corner_doubts_;
    std::vector<std::uint8_t> hidden_; ///< as drawn, one a corner
    std::vector<FacetsAt> corner_facets_;
    std::vector<Index> facets_at_;
    std::vector<Edge> edges_;
    std::vector<Vector> normals_; ///< of facets
};

} // namespace glim
