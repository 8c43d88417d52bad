#pragma once

#include "geometry/bearing.h"
#include "model/vehicle.h"

namespace glim {

/// The lamp's axes on this vehicle over this ground. `axis` is its reference axis; it is laid into
/// the ground plane. `side` is where the lamp stands: outboard is away from the median plane, on
/// the median plane itself to the left. For a lamp whose axis points outboard, +H is to the front.
/// Requires: `axis` is not vertical.
LampFrame lamp_frame(const Vehicle& vehicle, const Ground& ground, Side side,
                     const Direction& axis);

/// The reference axis a row means, for a lamp on that side.
Direction axis_of(const Vehicle& vehicle, Side side, ReferenceAxis axis);

Side other(Side side);

} // namespace glim
