#pragma once

#include "geometry/direction.h"
#include "units/units.h"

#include <compare>

namespace glim {

/// A direction of observation as the trade writes it: longitude H and latitude V about a
/// *vertical* pole, the equator parallel to the ground. Here, and nowhere else, stands the sign:
///
///     H outboard +, inboard -;   V up +, down -
///
/// on both sides of the vehicle, so that one table serves the left and the right lamp.
struct Bearing {
    Angle h;
    Angle v;
    friend auto operator<=>(const Bearing&, const Bearing&) = default;
};

/// A lamp's own axes in the vehicle frame. `up` is the normal of the ground, not the lamp's own up;
/// `forward` is the reference axis laid into the ground plane; `outboard` is horizontal and
/// perpendicular to it, on the side away from the median plane. Left and right lamps are mirror
/// images, so the three are right-handed on one side only.
struct LampFrame {
    Direction forward = Direction::x();
    Direction outboard = Direction::y();
    Direction up = Direction::z();
};

/// cosV cosH forward + cosV sinH outboard + sinV up. Exact on the axes.
Direction direction_of(const Bearing& b, const LampFrame& frame);

/// The inverse: H in (-180, 180], V in [-90, 90] degrees; H is 0 straight up and straight down.
Bearing bearing_of(const Direction& d, const LampFrame& frame);

} // namespace glim
