#pragma once

#include "input/table_reader.h"
#include "model/vehicle.h"

#include <optional>

namespace glim {

/// Reads [vehicle]. Nothing if its axes or its modelled side are not known.
std::optional<Vehicle> read_vehicle(TableReader& study);

struct GroundInState {
    Ground ground;
    std::string state; ///< "unladen", "curb" or "design"
};

/// Reads [ground]. Nothing if it is not known where the ground is.
std::optional<GroundInState> read_ground(TableReader& study, const std::optional<Vehicle>& vehicle);

} // namespace glim
