#pragma once

#include "judgement/findings.h"

namespace glim {

/// What is known of a lamp before it is looked at: side, axes, centre, heights over the ground in
/// that state. Several lamps answer together; the first gives axes and centre. Requires: `lamps` is
/// not empty, the study knows a ground.
LampLook new_look(const Study& study, const PreparedScene& scene,
                  const std::vector<LampStanding>& lamps, ReferenceAxis axis,
                  const std::string& state);

/// The lamp's reference axis as it stands: the declared one, else the rule's own.
Direction reference_axis(const Study& study, const LampStanding& lamp, ReferenceAxis axis);

/// Whether areas seen in the one are areas seen in the other.
bool same_view(const LampLook& a, const LampLook& b);
bool same_frame(const LampFrame& a, const LampFrame& b);

} // namespace glim
