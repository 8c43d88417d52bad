#pragma once

#include "units/units.h"

namespace glim {

/// Sine and cosine, exact (0, 1 or -1) at every multiple of 90 degrees, so that a grid line on an
/// axis lies on it. Elsewhere within one unit in the last place of the library's own.
double sin(Angle a);
double cos(Angle a);
double tan(Angle a);

/// The angle of the point (x, y) from the x axis, in (-180, 180] degrees; 0 for (0, 0).
Angle angle_of(double y, double x);
/// In [-90, 90] degrees; `sine` is clamped to [-1, 1] first, so that rounding does no harm.
Angle arc_sine(double sine);

/// Radians are spoken only here.
double in_radians(Angle a);

} // namespace glim
