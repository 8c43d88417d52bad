#pragma once

#include "visibility/sweep.h"

#include <optional>

namespace glim {

/// One lamp from one direction, step by step: which facets face the eye, which lattice corners are
/// hidden, where along the edges the shadow's rim runs, how much area that leaves.
class LitLook {
public:
    using Index = LitLattice::Index;

    LitLook(const LampView& view, const Direction& toward);

    /// Of all front-facing cells, nothing in the way.
    double bare_mm2() const { return bare_; }

    /// One byte a lattice corner: 1 where `caster` has something in the way. Only corners of
    /// front-facing facets are asked; with `only`, of those only where it is 1.
    std::vector<std::uint8_t> hidden_by(const Caster& caster,
                                        const std::vector<std::uint8_t>* only = nullptr) const;

    /// Sum over the front-facing cells; `whole` cells are wholly lit, `mixed` have corners of both
    /// kinds, of which `seen_in_mixed` is lit by linear cuts where the rim crosses the edges.
    struct Shares {
        double whole = 0;
        double mixed = 0;
        double seen_in_mixed = 0;
        double squared_mixed = 0;
        double seen() const { return whole + seen_in_mixed; }
    };
    Shares shares(const Caster& caster, const std::vector<std::uint8_t>& hidden) const;

    /// Corners of front-facing facets that are hidden, with their starts and the area each stands
    /// for.
    struct HiddenCorners {
        std::vector<RayStart> starts;
        std::vector<double> areas_mm2;
    };
    HiddenCorners hidden_corners(const std::vector<std::uint8_t>& hidden) const;

private:
    bool faces(const LitLattice::Cell& cell) const { return cosines_[cell.facet] > 0; }
    /// Of the most slanted front-facing facet there; none where no facet faces the eye.
    std::optional<float> skip_at(Index vertex) const;
    RayStart start_at(const Point& p, float skip) const;
    std::vector<float> rim_crossings(const Caster& caster,
                                     const std::vector<std::uint8_t>& hidden) const;

    const LampView& view_;
    Direction toward_;
    std::vector<double> cosines_; ///< one a lit facet
    double bare_ = 0;
};

} // namespace glim
