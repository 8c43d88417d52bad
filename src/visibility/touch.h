#pragma once

#include "units/units.h"

#include <algorithm>

namespace glim {

/// Below this cosine the skip along the ray grows no further: at a grazing direction it would
/// otherwise reach over real obstacles.
inline constexpr double least_skip_cosine = 0.05;

/// The way along a ray within which nothing blocks, so that a face does not hide itself by rounding
/// and a part that touches it does not hide it. `touch` is measured across the lit face, `cosine`
/// is between its normal and the ray. One rule for rays, exact areas and certificates.
inline Length skip_along_ray(Length touch, double cosine)
{
    return touch / std::max(cosine, least_skip_cosine);
}

} // namespace glim
