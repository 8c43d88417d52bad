#pragma once

#include "visibility/lamp_view.h"

namespace glim {

/// One lamp from one direction, step by step: which facets face the eye, which lattice corners are
/// hidden, where along the edges the shadow's rim runs, how much area that leaves.
class LitLook {
public:
    using Index = LitLattice::Index;
    /// One byte a lattice corner: 1 where something is in the way.
    using Hidden = std::vector<std::uint8_t>;

    LitLook(const LampView& view, const Direction& toward);

    const LitLattice& lattice() const { return view_.lattice; }
    const Direction& toward() const { return toward_; }
    Length touch() const { return view_.touch; }
    /// Between a lit facet's normal and the ray; the facet faces the eye where it is above 0.
    double cosine(Index facet) const { return cosines_[facet]; }
    bool faces(const LitLattice::Cell& cell) const { return cosines_[cell.facet] > 0; }
    /// How much of its way a corner's ray skips, mm: by the most slanted facet there that faces the
    /// eye; below 0 where none does.
    float skip(Index vertex) const { return skips_[vertex]; }
    /// In the view plane.
    double projected_mm2(const LitLattice::Cell& cell) const
    {
        return cell.area_mm2 * cosines_[cell.facet];
    }

    /// Of all front-facing cells, nothing in the way.
    double bare_mm2() const { return bare_; }

    /// Corners of front-facing facets, and where a ray from each starts.
    struct FrontCorners {
        std::vector<Index> vertices;
        std::vector<RayStart> starts;
    };
    /// With `only`, of those only where it is 1.
    FrontCorners front_corners(const Hidden* only = nullptr) const;
    /// Only corners of front-facing facets are asked; with `only`, of those only where it is 1.
    Hidden hidden_by(const Caster& caster, const Hidden* only = nullptr) const;

    /// For each lattice edge where along it the shadow's rim runs, 0 at its first end and 1 at its
    /// second; below 0 where both ends are of one kind.
    using Rim = std::vector<float>;
    Rim rim(const Caster& caster, const Hidden& hidden) const;

    /// Sum over the front-facing cells; `whole` cells are wholly lit, `mixed` have corners of both
    /// kinds or are marked, of which `seen_in_mixed` is lit by linear cuts where the rim crosses
    /// the edges.
    struct Shares {
        double whole = 0;
        double mixed = 0;
        double seen_in_mixed = 0;
        double squared_mixed = 0;
        double missed = 0; ///< of marked cells whose corners are of one kind
        double seen() const { return whole + seen_in_mixed; }
    };
    /// `marks`: one byte a cell, 0 where the cell is known to be uniform; none at all: all are
    /// taken as uniform.
    Shares shares(const Hidden& hidden, const Rim& rim,
                  std::span<const std::uint8_t> marks = {}) const;
    Shares shares(const Caster& caster, const Hidden& hidden) const
    {
        return shares(hidden, rim(caster, hidden));
    }

    /// The area that `shares` calls seen, every cell weighed by `brightness`, one a cell.
    double weighed_mm2(const Hidden& hidden, const Rim& rim,
                       std::span<const float> brightness) const;
    /// The same of all front-facing cells, nothing in the way.
    double weighed_bare_mm2(std::span<const float> brightness) const;

    /// The rim's straight way across a cell with corners of both kinds, in the view plane, mm.
    double rim_across_mm(const LitLattice::Cell& cell, const Rim& rim) const;

    /// What each hidden corner stands for: a third of the projected area of its front-facing cells.
    std::vector<double> areas_of_mm2(const Hidden& hidden) const;

private:
    void set_skips();
    RayStart start_at(const Point& p, float skip) const;
    Point along_edge(Index edge, double along) const;

    const LampView& view_;
    Direction toward_;
    std::vector<double> cosines_; ///< one a lit facet
    std::vector<float> skips_;    ///< one a corner
    double bare_ = 0;
};

} // namespace glim
