#pragma once

#include "judgement/plan.h"

namespace glim {

/// A check judged by the figures that a plan's looks have, without anything that explains it.
/// Points into `study` and `scene`, which the plan was made of.
CheckFindings judged(const AskedCheck& asked, const Study& study, const PreparedScene& scene,
                     const Plan& plan);

/// Takes what was sampled as it is, without the bounds that only contours could narrow.
void take_as_sampled(LampLook& look);

} // namespace glim
