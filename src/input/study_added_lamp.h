#pragma once

#include "input/table_reader.h"
#include "model/study.h"

#include <optional>

namespace glim {

/// Reads [add_lamp]; none where the study has none. Requires: surfaces, lamps and checks are read.
std::optional<AddLampTask> read_add_lamp(TableReader& top, const Study& study);

} // namespace glim
