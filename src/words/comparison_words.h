#pragma once

#include "remedy/comparison.h"
#include "words/text_block.h"

#include <string>
#include <vector>

namespace glim {

/// "met, +62.3 mm2"; "not asked" where the option does not ask the check.
std::string answer_in_short(const JudgedOption& option, std::string_view check);

/// "nose: up to 3.21 mm, 84.2 cm2, 11.3 cm3"; a line for each surface, or "none".
std::vector<std::string> change_words(const JudgedOption& option);

/// What is there that the first option has not, and what is gone: lamps, then other surfaces.
std::string parts_words(const JudgedOption& option);

/// The options side by side, a line each, what came of them and what they cost; then one by one
/// with the arithmetic; then where one overtakes another; then the caution.
std::string comparison_words(const Comparison& comparison, const TextStyle& style);

} // namespace glim
