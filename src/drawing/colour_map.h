#pragma once

#include "drawing/colour.h"

namespace glim {

/// Dark blue at 0 over grey to light yellow at 1: lightness rises in even steps, so that it reads
/// the same on grey paper and to those who confuse red and green. Clamped.
Colour cividis(double share);

/// For what has a sign: dark orange at -1, light grey at 0, dark blue at 1; both sides darken
/// alike. Clamped.
Colour diverging(double share);

} // namespace glim
