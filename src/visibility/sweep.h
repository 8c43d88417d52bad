#pragma once

#include "geometry/bearing.h"
#include "machine/workers.h"
#include "visibility/lit_lattice.h"
#include "visibility/ray_caster.h"
#include "visibility/seen_area.h"

namespace glim {

/// A lamp before its obstacles, ready to be looked at.
struct LampView {
    LitLattice lattice;
    Caster all;      ///< everything that blocks this lamp, its own lit faces' backs included
    Caster approved; ///< the lamp itself and what was approved with it: a part of `all`
    Length touch;
};

/// The areas toward one direction. Pure: the same answer in any thread.
SeenArea seen_toward(const LampView& view, const Direction& toward);

/// The areas toward each direction, in order. Throws Stopped if it was stopped.
std::vector<SeenArea> sweep(const LampView& view, std::span<const Direction> directions,
                            const Workers& workers);

/// Projected area that parts take toward one direction; places as in `view.all`.
struct TakenArea {
    Area alone;   ///< removing this part frees so much
    Area jointly; ///< others are in the way there too
};

/// By lattice corners, scaled so that all of them together stand for what is hidden. How a hidden
/// area divides among several parts is precise to about a cell along their rims.
std::vector<TakenArea> taken_toward(const LampView& view, const Direction& toward);

} // namespace glim
