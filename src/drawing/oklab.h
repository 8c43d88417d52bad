#pragma once

#include "drawing/colour.h"

namespace glim {

/// Oklab: lightness, green to red, blue to yellow. Equal distances look about equal.
struct Oklab {
    double lightness = 0, a = 0, b = 0;
};

/// Clamped to what sRGB holds.
Colour in_srgb(const Oklab& c);

/// `share` of `b` and the rest of `a`, in steps that look even.
Oklab between(const Oklab& a, const Oklab& b, double share);

} // namespace glim
