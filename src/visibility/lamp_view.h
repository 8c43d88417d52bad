#pragma once

#include "visibility/lit_lattice.h"
#include "visibility/lit_outline.h"
#include "visibility/ray_caster.h"

namespace glim {

/// A lamp before its obstacles, ready to be looked at.
struct LampView {
    LitLattice lattice;
    LitOutline outline;
    Caster all;      ///< everything that blocks this lamp, its own lit faces' backs included
    Caster approved; ///< the lamp itself and what was approved with it: a part of `all`
    Caster others;   ///< the rest of `all`
    Length touch;
    /// How bright each cell of the lattice is, in any one unit; empty where all are alike.
    std::vector<float> brightness = {};
};

} // namespace glim
