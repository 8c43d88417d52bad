#pragma once

#include "remedy/moved_lamp.h"
#include "report/json.h"

namespace glim {

/// The answer as data.
Json moved_lamp_json(const MovedLampAnswer& answer, const Study& study, const MoveLampTask& task);

/// A row for each move of the map, with its outcome and margin.
std::string move_map_csv(const MoveMap& map);

} // namespace glim
