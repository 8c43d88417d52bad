#pragma once

#include "input/table_reader.h"
#include "model/vehicle.h"

#include <optional>

namespace glim {

/// Reads [vehicle]. Nothing if its axes or its modelled side are not known.
std::optional<Vehicle> read_vehicle(TableReader& study);

/// Reads [ground]. Nothing if it is not known where the ground is.
std::optional<GroundState> read_ground(TableReader& study, const std::optional<Vehicle>& vehicle);

} // namespace glim
