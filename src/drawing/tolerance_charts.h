#pragma once

#include "drawing/figure.h"
#include "judgement/tolerance_findings.h"
#include "model/study.h"

namespace glim {

/// How a verdict's figure spreads over the builds: bars, with what the rule asks, what is drawn and
/// the worst stack-up as lines. Builds on the wrong side of what is asked are hatched.
Figure build_histogram(const ToleratedVerdict& verdict);

/// Who contributes how much to that spread: a bar for what each would take away by itself, a paler
/// one for what it does with others, a line for the interval of that. Requires: contributions.
Figure contribution_chart(const ToleratedVerdict& verdict, const ToleranceFindings& found,
                          const Study& study);

} // namespace glim
