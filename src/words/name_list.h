#pragma once

#include <string>
#include <vector>

namespace glim {

/// "a, b and c"
std::string name_list(const std::vector<std::string>& names);

} // namespace glim
