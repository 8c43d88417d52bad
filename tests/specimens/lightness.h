#pragma once

#include "drawing/colour.h"

namespace glim::test {

/// CIE 1976 L*, from the luminance of sRGB (IEC 61966-2-1): another measure than Oklab's own.
double lightness(Colour c);

} // namespace glim::test
