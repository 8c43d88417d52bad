#pragma once

#include "geometry/vector.h"

namespace glim {

/// Which way the path a, b, c turns: 1 to the left (counter-clockwise), -1 to the right, 0 where
/// the three lie on one line. Exact to the last bit of the coordinates, so that whoever asks about
/// the same points in another order is never told a contradiction. Requires: finite, and far from
/// the ends of what a double can hold (any place in a vehicle is).
int turn_of(const Point2& a, const Point2& b, const Point2& c);

} // namespace glim
