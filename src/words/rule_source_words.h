#pragma once

#include "judgement/findings.h"
#include "words/text_block.h"

#include <string>
#include <vector>

namespace glim {

/// A heading, and for each row where its figures come from; empty where there are none.
std::string rule_sources_words(const std::vector<const RuleRow*>& rows, const TextStyle& style);

/// The rows that were asked, each once by its name. Pointers into `findings`.
std::vector<const RuleRow*> rows_in(const Findings& findings);

} // namespace glim
