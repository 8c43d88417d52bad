#pragma once

#include "judgement/plan.h"

namespace glim {

/// Judges one lamp under one row by the best figures known: outcome a direction, worst direction,
/// margin, coverage. `uncovered` and `blockers` stay empty.
LampVerdict verdict_of(const RuleRow& row, const Asked& asked, const LampLook& look);

/// The directions whose exact areas would settle what `verdict` leaves open: the worst one, and
/// while no direction clearly fails, those whose bounds lie on both sides of the threshold. Places
/// in the look, ascending; empty when everything is settled.
std::vector<std::size_t> still_hanging(const LampVerdict& verdict, const LampLook& look);

} // namespace glim
