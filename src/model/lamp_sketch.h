#pragma once

#include "model/study.h"

namespace glim {

/// A lamp before there is a body: a lens of a simple outline, or a mesh, somewhere on a vehicle of
/// which only the width is known, and the rule that it has to meet.
///
/// Its frame: x forward of the lens's centre, y to the left of the median plane, z above the
/// ground, mm; the lamp is drawn on the left.
struct LampSketch {
    Study study;    ///< one surface, one lamp, one check; no body
    Length ahead;   ///< the drawing ends so far ahead of the lens
    Length width;   ///< of the lens, across the vehicle
    Length height;  ///< of the lens, upright
    Length lateral; ///< of its centre from the median plane
    Length above;   ///< of its centre above the ground
    /// How many facets the lens's file has, of which some may have been selected; 0: no file.
    std::size_t facets_of_file = 0;
};

} // namespace glim
