#pragma once

#include "geometry/triangle_mesh.h"

#include <optional>
#include <vector>

namespace glim {

/// What a relief of the reshapeable surfaces has to reach, and what it has to keep to.
struct ReliefWish {
    std::vector<std::size_t> checks = {};    ///< places in Study::checks; empty: all
    std::optional<Length> max_depth = {};    ///< along the push; none: as deep as it takes
    Angle steepest = degrees(30);            ///< against the surface as it was
    Length blend = millimetres(10);          ///< radius of the relief's rim
    Area spare_area = square_millimetres(0); ///< to be seen beyond what the rule asks for
    Length spare = millimetres(0);           ///< from the reshaped surface to the lines of sight
    std::vector<Box> untouched = {};         ///< vehicle frame: nothing moves inside
};

} // namespace glim
