#pragma once

#include <string_view>

namespace glim {

/// Whether the whole of `text` fits the pattern: `*` stands for any run of characters, also none;
/// `?` for exactly one (a byte); everything else, capitals too, for itself.
bool fits_glob(std::string_view pattern, std::string_view text);

} // namespace glim
