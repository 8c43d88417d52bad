#pragma once

#include <cmath>
#include <cstdint>

namespace glim {

/// sRGB, one byte a channel.
struct Colour {
    std::uint8_t red = 0, green = 0, blue = 0;
    friend bool operator==(Colour, Colour) = default;
};

inline constexpr Colour black{0, 0, 0};
inline constexpr Colour white{255, 255, 255};

/// `share` of `b` and the rest of `a`; in sRGB's own steps.
inline Colour mixed(Colour a, Colour b, double share)
{
    const auto mix = [&](std::uint8_t from, std::uint8_t to) {
        return static_cast<std::uint8_t>(std::lround(from + (to - from) * share));
    };
    return {mix(a.red, b.red), mix(a.green, b.green), mix(a.blue, b.blue)};
}

} // namespace glim
