#pragma once

#include "geometry/polygons.h"

namespace glim {

/// A convex polygon between two of fewer corners.
struct SimplerHull {
    ConvexPolygon inside;  ///< of corners of the polygon; at most twice as many as sides were asked
    ConvexPolygon outside; ///< whose sides lie along sides of the polygon
};

/// Sides are left out, and their neighbours prolonged until they meet, always the one that adds the
/// least area, until `sides` remain; the polygon inside has the ends of those that remained.
/// Requires: as `convex_hull` makes it; sides >= 4.
SimplerHull simpler_hull(const ConvexPolygon& hull, std::size_t sides);

} // namespace glim
