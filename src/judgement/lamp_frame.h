#pragma once

#include "geometry/bearing.h"
#include "model/vehicle.h"

namespace glim {

/// The lamp's axes on this vehicle over this ground. `axis` is its reference axis; it is laid into
/// the ground plane. `side` is where the lamp stands: outboard is away from the median plane, on
/// the median plane itself to the left. `counted_from` is the axis that the rule names: where that
/// is the outboard one, +H is to the front, else outboard, however the lamp's own axis is turned.
/// Requires: `axis` is not vertical.
LampFrame lamp_frame(const Vehicle& vehicle, const Ground& ground, Side side, const Direction& axis,
                     ReferenceAxis counted_from);

/// The reference axis a row means, for a lamp on that side.
Direction axis_of(const Vehicle& vehicle, Side side, ReferenceAxis axis);

Side other(Side side);

} // namespace glim
