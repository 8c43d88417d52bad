#pragma once

#include "input/grey_map.h"

namespace glim {

/// How bright a lit face is, as a grey PNG or as a table of numbers: a row of the table a line, its
/// numbers separated by commas, semicolons, blanks or tabs, in any one unit; lines that begin with
/// # say nothing. The first row is the top. Throws InputError with all complaints for what is no
/// number or below 0, for rows of different lengths, and for a map that is dark all over.
GreyMap read_luminance_map(std::string_view bytes, const std::string& name);

} // namespace glim
