#pragma once

#include <string>

namespace glim {

/// The style sheet of html_page(): for screens and for A4.
std::string html_style();

} // namespace glim
