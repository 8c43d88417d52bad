#pragma once

#include "model/complaint.h"
#include "words/text_block.h"

#include <string>
#include <vector>

namespace glim {

/// A paragraph for each: where, what, and what to do, if there is something.
std::string warnings_words(const std::vector<Warning>& warnings, const TextStyle& style);

} // namespace glim
