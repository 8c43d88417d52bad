#pragma once

#include "input/table_reader.h"
#include "model/surface.h"

namespace glim {

/// Reads `reshapeable`, `push` and `fixed_edges` of a [[surface]] with that role. Nothing where it
/// may not be reshaped.
std::optional<Reshape> read_reshape(TableReader& surface, Role role);

} // namespace glim
