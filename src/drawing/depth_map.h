#pragma once

#include "drawing/figure.h"
#include "model/vehicle.h"
#include "remedy/relief.h"

namespace glim {

/// How deep a surface was pushed where, seen along the axis of the vehicle nearest to its push,
/// with lines of equal depth in mm. `name` is the surface's.
Figure depth_map(const ReshapedSurface& surface, const std::string& name, const Vehicle& vehicle);

} // namespace glim
