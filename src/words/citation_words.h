#pragma once

#include "model/rule.h"

#include <string>

namespace glim {

/// "from memory: not verified; SOURCE, CLAUSE"
std::string citation_words(const Citation& citation);

} // namespace glim
