#pragma once

#include "judgement/plan.h"

namespace glim {

/// The gap that multiplies what a row of light asks of a lamp, as it was measured; its note names
/// `gap_row`, what follows from which gap, and where that is from. Empty where no such gap is
/// known.
std::vector<Measurement> multiplying_gap(const RuleRow& gap_row, const Asked& asked,
                                         const LampLook& look, const Study& study,
                                         const PreparedScene& scene);

} // namespace glim
