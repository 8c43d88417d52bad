#pragma once

#include "app/requests.h"

#include <string>
#include <vector>

namespace glim {

/// `arguments` without the program's own name. Throws InputError with everything that is wrong.
Request read_command_line(const std::vector<std::string>& arguments,
                          const std::string& program_version);

} // namespace glim
