#pragma once

#include "remedy/ways_of_rule.h"

namespace glim {

/// "`front-indicator-field`, or `reduced-front-area`"
std::string ways_words(const WaysOfRule& ways);

} // namespace glim
