#pragma once

#include "input/table_reader.h"
#include "model/vehicle.h"

#include <optional>

namespace glim {

/// Reads [vehicle]. Nothing if its axes or its modelled side are not known.
std::optional<Vehicle> read_vehicle(TableReader& study);

/// Reads [ground.unladen], [ground.curb] and [ground.design], in this order, as far as they are
/// there. None at all is a complaint; a state after a complaint is left out.
std::vector<GroundState> read_grounds(TableReader& study, const std::optional<Vehicle>& vehicle);

} // namespace glim
