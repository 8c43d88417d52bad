#pragma once

#include "judgement/plan.h"

namespace glim {

/// Judges one lamp under a row that measures where it stands: heights, distances, the gap to
/// another lamp, the axis, the parts of one lamp. A figure nearer to its limit than the lit mesh is
/// accurate is undecided. Requires: the row asks for no directions.
LampVerdict place_verdict(const RuleRow& row, const Asked& asked, const LampLook& look,
                          const Study& study, const PreparedScene& scene);

} // namespace glim
