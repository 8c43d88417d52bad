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

/// One lamp toward one direction, prepared to be looked at over and over while the lit face and
/// what stands before it move a little.
///
/// Only where a shadow's rim, the lit face's outline, or something that comes near the lit face was
/// within reach are corners asked again; the others keep the answer that they had as drawn. So the
/// area is that of visible_toward() with the same lattice, as long as moves keep to `Nearby`;
/// things so thin that the fine lattice misses them as drawn may be missed near them too.
class NearLook {
public:
    /// Needed while it is made, not afterwards.
    struct Prepared {
        const LampView& fine;    ///< tells where rims run; as drawn
        const LampView& coarse;  ///< with the lattice that is looked at
        const Caster& strangers; ///< what of `all` is not the lit face itself
    };
    NearLook(const Prepared& lamp, const Direction& toward, const Nearby& nearby);

    /// In the frame of the lit face: `toward` and `obstacles` as they stand to it then. Pure.
    Area visible(const Direction& toward, const Caster& obstacles) const;

    /// How many corners are asked each time, not counting those along rims.
    std::size_t corners() const { return asked_.size(); }

private:
    using Index = std::uint32_t;

    struct Asked {
        Index first_facet, facets; ///< those that it belongs to, in `facets_at_`
    };
    struct Edge {
        std::array<Index, 2> ends; ///< in `corners_`
    };
    struct Cell {
        std::array<Index, 3> corners, edges;
        Index facet; ///< in `normals_`
        double area_mm2;
    };
    struct Work;

    void keep_cells(const LampView& view, const std::vector<bool>& asked,
                    const std::vector<std::uint8_t>& hidden, double doubtful_cosine);
    float skip_at(const Asked& corner, const std::vector<double>& cosines) const;
    void ask_corners(Work& work, const Direction& toward, const Caster& obstacles) const;
    void find_rims(Work& work, const Direction& toward, const Caster& obstacles) const;
    double seen_mm2(const Work& work, const Cell& cell) const;

    Direction drawn_toward_;
    Length touch_;
    int rounds_ = 0;
    Vector lit_for_sure_ = Vector::Zero(); ///< area vectors of the cells that stay lit
    std::vector<Vector> normals_;
    std::vector<Asked> asked_;         ///< the first of the corners
    std::vector<Point> points_;        ///< of all corners
    std::vector<std::uint8_t> hidden_; ///< as drawn, one a corner
    std::vector<Index> facets_at_;
    std::vector<Edge> edges_;
    std::vector<Cell> cells_;
};

} // namespace glim
