#pragma once

#include "drawing/figure.h"
#include "model/vehicle.h"
#include "remedy/intrusion.h"

namespace glim {

/// How deep a surface reaches into a keep-clear space where, seen along the axis of the vehicle
/// nearest to its normal there. `name` is the surface's.
Figure intrusion_map(const Intrusion& intrusion, const std::string& name, const Vehicle& vehicle);

} // namespace glim
