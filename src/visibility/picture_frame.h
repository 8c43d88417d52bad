#pragma once

#include "geometry/direction.h"
#include "units/units.h"

#include <cstdint>

namespace glim {

/// What an eye sees from so far away that all it sees has one scale, on pixels. Places are in the
/// vehicle frame.
struct PictureFrame {
    Direction toward; ///< the eye
    Vector across;    ///< to the right as the eye sees it; unit, as is `up`
    Vector up;
    Point centre;                ///< is in the picture's middle
    Length pixel;                ///< a pixel's side, in the picture's plane
    std::uint32_t width, height; ///< pixels

    /// Pixels from the top left corner, to the right and down.
    Point2 place_of(const Point& p) const;
    /// How much nearer to the eye than the centre.
    Length depth_of(const Point& p) const;
};

/// `up` shows upward in the picture; where the eye looks straight along it, `forward` does.
/// Requires: `up` and `forward` are not parallel.
PictureFrame picture_frame(const Direction& toward, const Direction& up, const Direction& forward);

/// Pixels are seen by samples, two by two in each: so many rows of them, and so long.
inline constexpr std::uint32_t samples_a_side = 2;

/// The part of the picture's plane that a sample stands for.
inline Area area_of_sample(const PictureFrame& frame)
{
    return frame.pixel * frame.pixel / (samples_a_side * samples_a_side);
}

} // namespace glim
