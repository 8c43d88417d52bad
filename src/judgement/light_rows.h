#pragma once

#include "judgement/findings.h"

namespace glim {

/// The rows of light that have to be proved where `row` ends in proof due; none where it names none
/// or the study does not have the table.
std::vector<const RuleRow*> proof_rows(const RuleRow& row, const Study& study);

/// The row whose gap multiplies this row's light, of the same table; nothing where none does.
/// Requires: the row is one of a table of the study.
const RuleRow* row_of_multiplier(const RuleRow& row, const Study& study);

/// What a gap says of the multiplier. Nothing said: from the least to the most that it can give.
Multiplier multiplier_from(const GapToLamp& gap, const std::string& follows);

} // namespace glim
