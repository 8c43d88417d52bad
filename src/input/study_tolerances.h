#pragma once

#include "input/table_reader.h"
#include "model/study.h"

namespace glim {

/// Reads every [[module]] and [[tolerance]]: who moves with whom, and by how much. Requires: the
/// study's surfaces and lamps were read.
std::vector<Tolerance> read_tolerances(TableReader& top, const Study& study);

/// Reads [tolerances]; what is missing keeps its default. Requires: the checks were read.
ToleranceTask read_tolerance_task(TableReader& top, const Study& study,
                                  const std::vector<Tolerance>& tolerances);

} // namespace glim
