#pragma once

#include "input/table_reader.h"
#include "model/rule.h"

namespace glim {

/// Reads `criterion` of a row, one of the kinds in model/criterion.h:
///
///     criterion = { kind = "least_area", mm2 = 1250 }
///     criterion = { kind = "height", of = "apparent_surface", at_least = 350, at_most = 1500 }
Criterion read_criterion(TableReader& row);

} // namespace glim
