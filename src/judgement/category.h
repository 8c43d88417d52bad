#pragma once

#include "judgement/findings.h"

namespace glim {

/// What a measured gap can give, mesh accuracy included: the ids of those steps, widest first. All
/// of them where the gap is not known.
std::vector<std::string> may_follow(const GapToLamp& gap, const LampVerdict& measured);

/// What the gap says of the category of a lamp that declares `declared`, which may be empty.
CategoryByGap category_by_gap(const GapToLamp& gap, const LampVerdict& measured,
                              const std::string& declared);

/// Whether a row depends on the category of the lamp.
bool asks_for_category(const std::vector<Condition>& conditions);

} // namespace glim
