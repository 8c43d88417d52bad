#pragma once

#include "judgement/see.h"

namespace glim {

/// Fills each verdict's `uncovered` and `blockers`: what is in the way in the worst direction, and
/// on the mean over the directions that are not met. Rows that tell what a proof would say have no
/// blockers: the row that asks for the proof has them. `scene` is the one that `eyes` look at.
/// Throws Stopped.
void explain(Findings& findings, const Study& study, const PreparedScene& scene, const Eyes& eyes,
             const Workers& workers);

} // namespace glim
