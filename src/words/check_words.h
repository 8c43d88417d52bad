#pragma once

#include "judgement/findings.h"
#include "words/text_block.h"

#include <vector>

namespace glim {

/// "NOT MET  across the nose", the outcome alone in colour: blue for met, yellow for the rest. The
/// two are told apart by every kind of colour vision, and by the words anyway.
std::string check_heading(const CheckFindings& check, const TextStyle& style);

/// Which rule was asked, what was chosen of it, and what the figures do not tell.
std::vector<Labelled> answer_entries(const CheckFindings& check);

/// One check, item by item: what decided in full, other rows and lamps in a line each.
std::vector<Labelled> check_entries(const Findings& findings, const CheckFindings& check);

} // namespace glim
