#pragma once

#include "input/select_facets.h"

namespace glim {

/// Reads the key `select` of a surface's table; no such key: everything.
Selection read_selection(TableReader& surface);

} // namespace glim
