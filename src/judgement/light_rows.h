#pragma once

#include "judgement/findings.h"

namespace glim {

/// The rows of light that have to be proved where `row` ends in proof due; none where it names none
/// or the study does not have the table.
std::vector<const RuleRow*> proof_rows(const RuleRow& row, const Study& study);

/// The row whose gap multiplies this row's light, of the same table; nothing where none does.
/// Requires: the row is one of a table of the study.
const RuleRow* row_of_multiplier(const RuleRow& row, const Study& study);

/// The row whose gap says of which category a lamp of this function is, of the same table; nothing
/// where `row` asks for none. Requires: the row is one of a table of the study.
const RuleRow* row_of_category(const RuleRow& row, LampFunction function, const Study& study);

/// From the least to the most that the gap can give: all of them where it is not known, and more
/// than one where it is nearer to a limit than meshes are accurate.
Multiplier multiplier_from(const GapToLamp& gap, const LampVerdict& measured);

} // namespace glim
