#pragma once

#include "remedy/relief.h"

namespace glim {

/// The space that a relief takes from what is behind the surface, for those who cut it out of a
/// model: closed, its outside outward. Outside it is the surface as it was, inside the reshaped
/// one, and walls where a rim of the surface moves. Facets of which no corner was pushed farther
/// than `unmoved` are left out, and nearer points count as not pushed at all. Empty where nothing
/// was pushed.
TriangleMesh cutter_body(const ReshapedSurface& surface);

/// A thousandth of a millimetre is nobody's relief.
inline constexpr Length unmoved = millimetres(0.001);

/// The surface's points before they were pushed, one for each of its points.
std::vector<Point> points_before(const ReshapedSurface& surface);

/// What a closed mesh encloses, mm3: above 0 where its outside is outward.
double enclosed_mm3(const TriangleMesh& mesh);

} // namespace glim
