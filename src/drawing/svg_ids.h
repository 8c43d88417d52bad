#pragma once

#include <string>

namespace glim {

/// Cairo numbers some parts of an SVG by what the process has drawn before; here they are numbered
/// by where they stand in the file, so that the same drawing gives the same bytes.
std::string with_ids_counted_from_one(const std::string& svg);

} // namespace glim
