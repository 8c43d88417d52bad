#pragma once

#include <string>
#include <vector>

namespace glim {

/// "`nose`", so that a name can be told from the words around it.
inline std::string quoted(const std::string& name) { return "`" + name + "`"; }

/// "a, b and c"
std::string name_list(const std::vector<std::string>& names);

} // namespace glim
