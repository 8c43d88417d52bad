#pragma once

#include "model/study.h"
#include "remedy/relief.h"
#include "words/text_block.h"

#include <string>

namespace glim {

/// One sentence: "Found: a relief at most 21.9 mm deep, of nose, meets what was asked."
std::string relief_sentence(const Relief& relief, const Study& study);

/// The answer for people: how shallow it can be and why, the relief in figures, what its slope
/// costs, what lies behind, what limits it, and what `check` says of it.
std::string relief_words(const Relief& relief, const Study& study, const TextStyle& style = {});

} // namespace glim
