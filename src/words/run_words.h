#pragma once

#include "judgement/findings.h"

#include <string>
#include <string_view>

namespace glim {

/// How many checks ended how: "2 not met, 1 met".
std::string counts_words(const Findings& findings);

/// How finely was looked: "a direction every 1 deg and at every edge of a field; ...".
std::string looked_words(const Sampling& sampling);

/// In which directions bounds are proved.
std::string_view words_of(Certify certify);

} // namespace glim
