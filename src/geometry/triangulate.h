#pragma once

#include "geometry/triangle_mesh.h"

#include <optional>

namespace glim {

/// A polygon of three or more corners, plane or nearly so, cut into triangles of the same winding:
/// corners.size() - 2 of them, as places in `corners`. Convex polygons become fans, others lose
/// ears; a polygon that crosses itself gives nothing.
///
/// It may touch itself, as one does that reaches its hole by a cut there and back. A polygon all on
/// one line becomes a fan without area. A warped one is judged as it looks along the axis that it
/// faces most. The work grows with the square of the number of corners.
std::optional<std::vector<Facet>> triangulated(std::span<const Point> corners);

/// All triangles from the first corner: what remains for a polygon that cannot be cut properly.
/// Requires: three corners or more.
std::vector<Facet> fan_of(std::size_t corners);

} // namespace glim
