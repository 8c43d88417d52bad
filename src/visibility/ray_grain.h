#pragma once

#include "units/units.h"

namespace glim {

/// How far off a ray's answer may be across the ray, about an edge `distance` from the scene
/// frame's zero: the start, the direction, the corners and the tracer's own sums are floats, each
/// good to 2^-24 of its size, and eight such errors come together. The tracer turns rays into an
/// instance's frame; `shift` is how far that frame's zero is away.
inline Length ray_grain(Length distance, Length shift)
{
    constexpr Length least = millimetres(2e-5); ///< starts lie some 100 mm from the zero
    constexpr double float_grain = 0x1p-24;
    return least + 8 * float_grain * (distance + shift);
}

} // namespace glim
