#include "drawing/colour_ramp.h"

#include "drawing/oklab.h"

#include <algorithm>

namespace glim {

namespace {

// Light enough to show shape by shading, and not white, which would look lit.
constexpr Oklab nothing{0.87, 0, 0};
// As strong as sRGB holds at this hue and lightness.
constexpr Oklab most{0.52, 0.0868, 0.1034};

} // namespace

Colour ramp_colour(double strength)
{
    return in_srgb(between(nothing, most, std::clamp(strength, 0.0, 1.0)));
}

} // namespace glim
