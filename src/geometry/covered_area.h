#pragma once

#include "geometry/polygons.h"

namespace glim {

/// The area that the triangles cover together: where several lie over each other it counts once.
/// As exact as `uncovered_area`; triangles that only share an edge or a corner add no error.
Area covered_area(std::span<const PlaneTriangle> triangles);

} // namespace glim
