#pragma once

#include "judgement/findings.h"
#include "report/run_facts.h"
#include "words/text_block.h"

#include <string>

namespace glim {

/// The findings for people: every check with its outcome, the least area and its margin, the worst
/// direction, what is not covered, what is in the way, where the rule's figures come from; then
/// warnings, what was looked at, and the caution.
std::string summary(const Findings& findings, const RunFacts& facts, const TextStyle& style = {});

/// A line a check, and the caution: for `--quiet`.
std::string short_summary(const Findings& findings, const TextStyle& style = {});

} // namespace glim
