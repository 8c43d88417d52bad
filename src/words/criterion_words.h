#pragma once

#include "model/rule.h"

#include <string>

namespace glim {

/// What a row asks, in words: "at least 1250 mm2 in view in every direction".
std::string criterion_words(const Criterion& criterion);

/// "overall width below 2032 mm, vehicle category M1 or N1"
std::string conditions_words(const std::vector<Condition>& conditions);

/// "front direction indicator, stop lamp"; "every function" for none.
std::string functions_words(const std::vector<LampFunction>& functions);

} // namespace glim
