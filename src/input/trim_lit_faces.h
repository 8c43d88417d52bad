#pragma once

#include "input/study_lamps.h"

namespace glim {

/// How the surface that a trimmed lamp shines from begins its name.
inline constexpr std::string_view lit_part_prefix = "lit part of ";

/// Gives each lamp with a trim one surface more, which is what the trim leaves of its lit surfaces,
/// and has the lamp emit from it. The whole surfaces stay in the way as they are, approved with the
/// lamp. A warning tells how much is left.
///
/// Complains, at the lamp's trim, where nothing is left, where the curve crosses itself along the
/// lamp's axis or the axis is not known, and where an inset meets no open edge. `lamps` are the
/// study's, in its order.
void trim_lit_faces(const std::vector<LampDraft>& lamps, Study& study, Complaints& complaints);

} // namespace glim
