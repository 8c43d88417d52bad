#pragma once

#include <string>
#include <string_view>

namespace glim {

/// Text for a page: `&`, `<`, `>` and `"` as references, so that it fits between tags and into an
/// attribute; bytes that are no UTF-8 and characters that HTML forbids become U+FFFD.
std::string html_text(std::string_view text);

/// "data:image/png;base64,..."
std::string data_uri(std::string_view media_type, std::string_view bytes);

} // namespace glim
