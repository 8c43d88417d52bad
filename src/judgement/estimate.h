#pragma once

#include "judgement/findings.h"

namespace glim {

/// Where a row's proof is due and the check's rows hold what has to be proved, says of each lamp
/// with photometric data whether its visible part would do: every row of the proof that applies to
/// the lamp is met, or would be. An estimate; it changes no outcome.
void add_estimates(CheckFindings& check, const Study& study);

} // namespace glim
