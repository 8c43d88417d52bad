#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace glim {

/// One cell by RFC 4180: quoted if it holds a comma, a quote or a line break, quotes doubled.
std::string csv_cell(std::string_view text);

/// One row, ended by a line feed (not by RFC 4180's two bytes: tools on every system read it, and
/// comparing files line by line stays easy).
std::string csv_row(const std::vector<std::string>& cells);

} // namespace glim
