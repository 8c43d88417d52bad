#pragma once

#include "input/table_reader.h"
#include "model/study.h"

namespace glim {

/// Reads [keep_clear]; what is missing keeps its default. Requires: the checks were read.
KeepClearWish read_keep_clear(TableReader& top, const Study& study);

} // namespace glim
