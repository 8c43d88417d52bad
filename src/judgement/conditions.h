#pragma once

#include "judgement/findings.h"

namespace glim {

/// Whether all hold for this lamp as it is looked at, taken as one of `category`. A width or a
/// category that the study does not give holds for nothing; the reader asks for what a check needs.
bool all_hold(const std::vector<Condition>& conditions, const Study& study, const Lamp& lamp,
              const LampLook& look, std::string_view category);
/// The same, of the category that it declares.
bool all_hold(const std::vector<Condition>& conditions, const Study& study, const Lamp& lamp,
              const LampLook& look);

/// The same for conditions that ask about the vehicle alone.
bool all_hold(const std::vector<Condition>& conditions, const Vehicle& vehicle);

/// Whether the row speaks of lamps with this function.
bool speaks_of(const RuleRow& row, LampFunction function);

} // namespace glim
