#pragma once

#include "judgement/plan.h"

namespace glim {

/// Judges one lamp under one row that looks in directions, by the best figures known: outcome a
/// direction, worst direction, margin, coverage. What explains it (`uncovered`, `blockers`,
/// `crossings`) stays empty.
LampVerdict verdict_of(const RuleRow& row, const Asked& asked, const LampLook& look,
                       const Sampling& sampling);

/// The verdict's frame: look, field, relaxation, and why the row does not apply, if it does not.
LampVerdict begun_verdict(const Asked& asked);

/// The directions whose exact areas would settle what `verdict` leaves open, some at a time: the
/// worst one, and while no direction clearly fails, those that are open, likeliest to fail first.
/// Places in the look, ascending; empty when everything is settled.
std::vector<std::size_t> still_hanging(const RuleRow& row, const LampVerdict& verdict,
                                       const LampLook& look);

/// Whether no direction has turned out yet in which the row cannot be met.
bool may_be_met(const LampVerdict& verdict);

} // namespace glim
