#pragma once

#include "input/table_reader.h"
#include "model/rule.h"

namespace glim {

/// Reads `when`: a list of conditions, each a length with limits or a word from a list,
///
///     when = [{ quantity = "axis_height", below = 750 },
///             { quantity = "vehicle_category", one_of = ["M1", "N1"] }]
std::vector<Condition> read_conditions(TableReader& table);

/// The same for a [[rule]], which can ask about the vehicle only, not about one lamp.
std::vector<Condition> read_vehicle_conditions(TableReader& table);

/// The lamp functions listed under a key.
std::vector<LampFunction> read_functions(TableReader& table, std::string_view key);

} // namespace glim
