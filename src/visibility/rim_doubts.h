#pragma once

#include "visibility/flock.h"
#include "visibility/lit_look.h"

namespace glim {

/// How far the shadow of `flock` has to stray, as the eye sees it, before a corner of the coarse
/// lattice may be hidden otherwise than as drawn, mm; by corner, and by the way from there to where
/// the shadow was that strays onto it. Infinity where that is farther than the flock's reach; 0 of
/// corners from which no ray starts as drawn, since one may start where the face has turned.
/// Counted from the rims of the shadow on the lit face, from those that run beside it, and from
/// where a body stands so near before or behind the face that it may change sides; to one cell of
/// the fine lattice, on the safe side, but for things that the fine lattice misses. `fine` tells
/// where rims run, as drawn.
std::vector<PerSector<float>> corner_doubts(const LitLook& fine, const Flock& flock,
                                            const LitLook& coarse);

} // namespace glim
