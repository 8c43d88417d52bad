#pragma once

#include "judgement/findings.h"

namespace glim {

/// The directions that are not met, joined to neighbours along the grid and across its diagonals:
/// one range a patch, the one with most directions first, then by V and H.
std::vector<UncoveredRange> uncovered_ranges(const LampVerdict& verdict, const LampLook& look);

} // namespace glim
