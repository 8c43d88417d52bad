#pragma once

#include "generator/cubic_surface.h"

namespace glim::demo {

/// The outer skin of the left front of a made-up delivery vehicle, from the median plane round the
/// nose, the catwalk beside it and the wing to the door (`u`), and from the bumper's lower edge
/// over the bonnet's edge to the foot of the windscreen (`v`).
///
/// The frame that all of the generator draws in, millimetres: x rearward, zero at the front axle;
/// w (the second coordinate) to the left of the median plane; z upward. It is left-handed; the
/// writer turns w into the vehicle's y = -w.
CubicSurface body_surface();

/// The front wheel's centre, and the radius of the opening around it.
inline constexpr double axle_z = 210;
inline constexpr double arch_radius = 368;

} // namespace glim::demo
