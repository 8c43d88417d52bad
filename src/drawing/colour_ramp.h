#pragma once

#include "drawing/colour.h"

namespace glim {

/// From a neutral light grey at 0 to a strong dark orange at 1, in steps that look even: also on
/// grey paper, because it only darkens, and to those who confuse red and green. Clamped.
Colour ramp_colour(double strength);

} // namespace glim
