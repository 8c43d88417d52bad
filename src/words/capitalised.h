#pragma once

#include <string>

namespace glim {

/// Words with a capital letter in front, as a sentence begins; only a to z are changed.
std::string capitalised(std::string words);

} // namespace glim
