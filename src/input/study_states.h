#pragma once

#include "input/table_reader.h"
#include "model/study.h"

namespace glim {

/// Reads every [[state]] of ride height, pitch and load, after the grounds that the study has by
/// then. A state whose `from` cannot be told, and one after a complaint, is left out.
std::vector<GroundState> read_states(TableReader& top, const Study& study,
                                     const std::optional<Vehicle>& vehicle);

} // namespace glim
