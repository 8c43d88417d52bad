#pragma once

#include <string>
#include <vector>

namespace glim {

/// The states of load that studies and tables know by name; a study's grounds stand in this order.
inline const std::vector<std::string> load_states = {"unladen", "curb", "design"};

} // namespace glim
