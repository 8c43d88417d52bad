#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace glim {

/// A name made of letters, digits, `.`, `_` and `-` of ASCII, for file systems and for formats that
/// divide words by blanks: runs of anything else become one `-`. It neither begins with a `.` or a
/// `-` nor ends with one, is no device's name on any system, has at most 80 bytes and is not empty.
std::string plain_name(std::string_view name);

/// The plain names of all, in order; those that would be one file on a system that takes capitals
/// and small letters for the same get `-2`, `-3` ... behind.
std::vector<std::string> plain_names(const std::vector<std::string>& names);

} // namespace glim
