#pragma once

#include "judgement/findings.h"

#include <string>

namespace glim {

/// `directions.csv`: a row per check, lamp and direction. A direction that several rows of the
/// check ask of the lamp appears once, with the worst of their outcomes (the first in the order of
/// Outcome); one that no applicable row asks does not appear. Where the exact area is known,
/// visible, low, high and the expected error are its own.
std::string directions_csv(const Findings& findings);

} // namespace glim
