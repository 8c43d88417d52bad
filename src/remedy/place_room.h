#pragma once

#include "model/lamp_sketch.h"

namespace glim {

/// Where a row of place lets the lens's centre be.
struct PlaceRoom {
    enum class Of { height, lateral };
    std::string row, title;
    Citation citation;
    Of of = Of::height;          ///< above the ground; from the median plane
    std::optional<Length> least; ///< none: no limit that way
    std::optional<Length> most;
    Length is; ///< where the sketch has it

    bool keeps() const { return (!least || is >= *least) && (!most || is <= *most); }
};

/// Of all rows of the sketch's table that speak of its lamp and apply to its vehicle, whether the
/// rule asks them or not. Where a row leaves more room for bodies that allow no other place, the
/// narrower limit counts.
std::vector<PlaceRoom> place_rooms(const LampSketch& sketch, const Box& lens);

} // namespace glim
