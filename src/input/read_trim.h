#pragma once

#include "geometry/trim.h"
#include "input/table_reader.h"

namespace glim {

/// Reads the key `trim` of a lamp, and the file of its curve. Nothing if it is missing or was
/// complained of.
std::optional<Trim> read_trim(TableReader& lamp);

} // namespace glim
