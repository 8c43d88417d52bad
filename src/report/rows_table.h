#pragma once

#include "judgement/findings.h"
#include "report/document.h"

namespace glim {

/// Every row of a check and every lamp that it applies to, with figure, margin, outcome and where
/// the row's figures come from.
Table rows_table(const Findings& findings, const CheckFindings& check);

/// What was not asked, one item a reason: "The row speaks of other functions: x, y". Empty if all
/// was.
std::vector<std::string> rows_not_asked(const Findings& findings, const CheckFindings& check);

} // namespace glim
