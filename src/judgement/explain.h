#pragma once

#include "judgement/see.h"

namespace glim {

/// Fills each verdict's `uncovered` and `blockers`: what is in the way in the worst direction, and
/// on the mean over the directions that are not met. Throws Stopped.
void explain(Findings& findings, const Study& study, const Eyes& eyes, const Workers& workers);

} // namespace glim
