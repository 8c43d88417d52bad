#pragma once

#include "geometry/polygons.h"

namespace glim {

/// The smallest convex polygon around the points: counter-clockwise from the leftmost (of several,
/// the lowest) point, no corner twice, none on the line between its neighbours. Exact: each corner
/// is one of the points, and none lies outside by so much as the last bit. Points all on one line
/// give its two ends, one place gives one point, nothing gives nothing. Any order of the points
/// gives the same corners. Requires: finite coordinates.
ConvexPolygon convex_hull(std::span<const Point2> points);

} // namespace glim
