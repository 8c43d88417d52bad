#pragma once

#include "geometry/field.h"
#include "geometry/slot.h"

#include <vector>

namespace glim {

using DirectionId = SlotId<struct DirectionKind>;

/// The nodes at which a field is looked at. Lines stand at multiples of the step, and at every
/// edge of every rectangle, so that all corners of the field are among the nodes.
struct DirectionGrid {
    /// In order of V, then H. A field of one line or one point has nodes too.
    std::vector<Bearing> nodes;
    /// The solid angle that each node stands for: the part of the field nearer to it than to its
    /// neighbours along the grid. They add up to the field's; all 0 for a line or a point.
    std::vector<SolidAngle> weights;
};

/// Requires: step > 0, the field has a rectangle, none upside down.
DirectionGrid grid_of(const Field& field, Angle step);

} // namespace glim
