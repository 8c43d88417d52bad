#pragma once

#include <cstdint>

namespace glim {

/// sRGB, one byte a channel.
struct Colour {
    std::uint8_t red = 0, green = 0, blue = 0;
    friend bool operator==(Colour, Colour) = default;
};

/// From a neutral light grey at 0 to a strong dark orange at 1, in steps that look even: also on
/// grey paper, because it only darkens, and to those who confuse red and green. Clamped.
Colour ramp_colour(double strength);

} // namespace glim
