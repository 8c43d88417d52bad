#pragma once

#include "judgement/findings.h"
#include "report/document.h"

#include <string>
#include <vector>

namespace glim {

/// How an outcome is meant in a document.
Tone tone_of(Outcome outcome);

/// A check's answer in one sentence: "Not met: 784.2 mm2 in view where 1250 mm2 are needed, 465.8
/// mm2 too little; decided by indicator, seen from 45 deg inboard, 15 deg down."
std::string answer_sentence(const Findings& findings, const CheckFindings& check);

/// Places in `findings.checks`, the check that is furthest from being met first: by outcome, then
/// by margin as a share of what is asked, then in their own order.
std::vector<std::size_t> worst_first(const Findings& findings);

/// The first of them. Requires: there is one.
std::size_t worst_check(const Findings& findings);

} // namespace glim
