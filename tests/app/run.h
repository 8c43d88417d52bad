#pragma once

#include <string>
#include <vector>

namespace glim::test {

/// What a finished program left behind.
struct Ran {
    int exit_code = 0; ///< 128 + the signal's number if one ended it
    std::string output, errors;
};

/// Runs a line of POSIX shell in `folder`, with the built program as `cornerglim`.
Ran run(const std::string& line, const std::string& folder);

/// The studies and meshes of these tests.
std::string studies();

} // namespace glim::test
