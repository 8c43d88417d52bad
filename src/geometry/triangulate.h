#pragma once

#include "geometry/triangle_mesh.h"

#include <optional>

namespace glim {

/// A polygon of three or more corners, plane or nearly so, cut into triangles of the same winding:
/// corners.size() - 2 of them, as places in `corners`. Convex polygons become fans, others lose
/// ears; a polygon that crosses itself gives nothing.
std::optional<std::vector<Facet>> triangulated(std::span<const Point> corners);

} // namespace glim
