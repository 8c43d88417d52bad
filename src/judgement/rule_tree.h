#pragma once

#include "judgement/findings.h"

namespace glim {

/// Answers the check from its rows: the rule's all-of and any-of, and which lamps have to meet
/// them. A lamp that answers alone must meet *every* row of the rule itself; two lamps that meet
/// one row each do not add up to one, and a lamp that some rows pass over because of its function
/// does not answer for one that they speak to. Each side of the vehicle on which a lamp of the
/// check stands must have its answer. Fills `outcome` and `deciding`; `rows` and `rule` must be
/// filled.
void answer_from_rows(CheckFindings& check, const RuleTable& table,
                      const std::vector<LampLook>& looks);

} // namespace glim
