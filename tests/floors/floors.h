#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace glim::test {

/// Everything in `src` that breaks the plan of rooms and floors, one line each, `file:line: what`,
/// sorted; empty if all is well. Told are: a folder that is no room, a source outside any room, an
/// include of a higher room or of another room on the same floor, of `input` from any room but
/// `app`, of files in a circle, of an outside library elsewhere than at its door, of a library
/// that has no door, and one that does not give its path from `src`.
std::vector<std::string> broken_floors(const std::filesystem::path& src);

} // namespace glim::test
