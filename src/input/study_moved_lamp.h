#pragma once

#include "input/table_reader.h"
#include "model/study.h"

#include <optional>

namespace glim {

/// Reads [move_lamp]; none where the study has none. Requires: lamps and checks are read.
std::optional<MoveLampTask> read_move_lamp(TableReader& top, const Study& study);

} // namespace glim
