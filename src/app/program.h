#pragma once

#include <string>
#include <vector>

namespace glim {

/// The whole program: reads the command line, answers, prints, and turns whatever goes wrong into
/// words and an exit code. `arguments` without the program's own name.
int run_program(const std::vector<std::string>& arguments);

} // namespace glim
