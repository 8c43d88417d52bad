#pragma once

#include "visibility/lamp_view.h"

namespace glim {

/// Who tells where rims run.
struct RimWitness {
    const LampView& fine;    ///< as drawn
    const Caster& strangers; ///< what of `all` may move against the lit face
};

/// How far something has to move, as the eye sees it, before a corner of a lattice may look
/// otherwise than as drawn, mm; one a corner of `lattice`. Infinity where that is farther than
/// `reach`. Counted from the rims of shadows on the lit face, from those that run beside it, and
/// from where something stands so near before or behind the face that it may change sides; to one
/// cell of the fine lattice, on the safe side, but for things that the fine lattice misses.
std::vector<float> corner_doubts(const RimWitness& witness, const LitLattice& lattice,
                                 const Direction& toward, Length reach);

} // namespace glim
