#pragma once

#include "input/table_reader.h"
#include "model/vehicle.h"

#include <optional>

namespace glim {

/// A ground that is steeper than this against the vehicle's up is a slip of the pen.
inline constexpr Angle most_ground_tilt = degrees(10);

/// The ways to say where the ground is, for remedies.
inline constexpr std::string_view ways_to_give_ground =
    "height = (mm along the axis that points up), axles = { front = [x, y, z], rear = [x, y, z] } "
    "and plane = { point = [x, y, z], normal = [x, y, z] }";

/// How many of `height`, `axles` and `plane` the table has.
int grounds_given(const TableReader& table);

/// The ground that the table's `height`, `axles` or `plane` says, `section` in model/study_keys.h;
/// nothing where there is none, or after a complaint. Vehicle frame. Leaves it to the caller to
/// complain of none or several, and to finish the section.
std::optional<Ground> read_ground(TableReader& table, std::string_view section,
                                  const std::optional<Vehicle>& vehicle);

/// Reads the whole table of a state of load, [ground.unladen]; it has to say one of the three.
std::optional<Ground> read_ground_of(TableReader& state, const std::optional<Vehicle>& vehicle);

} // namespace glim
