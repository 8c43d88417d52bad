#pragma once

#include "geometry/vector.h"

#include <string>
#include <vector>

namespace glim {

/// Text as TOML writes it, quotes included.
std::string toml_text(const std::string& text);
/// "[1, 2.5, -3]": reads back as the same point or vector.
std::string toml_point(const Vector& v);
/// A list of texts.
std::string toml_list(const std::vector<std::string>& names);

} // namespace glim
