#pragma once

#include <string>

namespace glim::demo {

/// What the demo's front indicator shines in cd, by H outboard-positive and V in degrees: a beam
/// along the axis that meets category 1a and front turn signals close to the dipped beam, and a
/// wide spread that leans outboard. Invented; no lamp was measured.
double indicator_cd(double h_deg, double v_deg);

/// The same as an LM-63-2002 file of type A, measured on the left lamp: H and V from -90 to 90
/// degrees, H counted to the right of one who looks out along the axis. Always the same bytes.
std::string indicator_ies();

} // namespace glim::demo
