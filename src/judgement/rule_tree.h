#pragma once

#include "judgement/findings.h"

namespace glim {

/// What the answer stands on beside the rows' findings.
struct RuleGround {
    const RuleTable& table;
    const Vehicle& vehicle;
    const std::vector<bool>& consulted; ///< by place in every row's `lamps`: not asked itself
};

/// Answers the check from its rows: the rule's all-of, any-of and choices, and which lamps have to
/// meet them. A lamp that answers alone must meet *every* row of the rule itself; two lamps that
/// meet one row each do not add up to one, and a lamp that some rows pass over because of its
/// function does not answer for one that they speak to. Each side of the vehicle on which a lamp of
/// the check stands must have its answer.
///
/// A choice that `check.options` does not declare is undecided, whatever its parts say, unless none
/// of them is met. A part that asks other lamps counts only beside parts that apply to the lamp
/// itself. Fills `outcome`, `because`, `explanation` and `deciding`; `rows`, `rule` and `options`
/// must be filled.
void answer_from_rows(CheckFindings& check, const RuleGround& ground,
                      const std::vector<LampLook>& looks);

} // namespace glim
