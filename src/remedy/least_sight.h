#pragma once

#include "geometry/field.h"
#include "geometry/triangle_mesh.h"

namespace glim {

/// Where a lit face shows least of itself, and how much, with nothing in the way.
struct LeastSight {
    Bearing from;
    Area shown; ///< what the face hides of itself is not taken off
};

/// The least over a grid of `field`, its corners included. `lit`: level frame.
LeastSight least_sight(const TriangleMesh& lit, const Field& field);

/// Whether that is less than what is needed, and not by rounding alone.
bool is_too_small(Area shown, Area needed);

} // namespace glim
