#include "drawing/oklab.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// One channel of linear light in sRGB's byte.
std::uint8_t encoded(double linear)
{
    const double light = std::clamp(linear, 0.0, 1.0);
    const double code =
        light <= 0.0031308 ? 12.92 * light : 1.055 * std::pow(light, 1 / 2.4) - 0.055;
    return static_cast<std::uint8_t>(std::lround(255 * code));
}

double cube(double x) { return x * x * x; }

} // namespace

/// CSS Color Module Level 4, section "Sample code for Color Conversions".
Colour in_srgb(const Oklab& c)
{
    const double l = cube(c.lightness + 0.3963377774 * c.a + 0.2158037573 * c.b);
    const double m = cube(c.lightness - 0.1055613458 * c.a - 0.0638541728 * c.b);
    const double s = cube(c.lightness - 0.0894841775 * c.a - 1.2914855480 * c.b);
    return {encoded(4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s),
            encoded(-1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s),
            encoded(-0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s)};
}

Oklab between(const Oklab& a, const Oklab& b, double share)
{
    return {std::lerp(a.lightness, b.lightness, share), std::lerp(a.a, b.a, share),
            std::lerp(a.b, b.b, share)};
}

} // namespace glim
