#pragma once

#include "input/table_reader.h"
#include "model/study.h"

namespace glim {

/// Reads every [[moved_part]] and the fixed positions that it can be in. Requires: the study's
/// surfaces and lamps were read.
std::vector<MovedPart> read_moved_parts(TableReader& top, const Study& study);

} // namespace glim
