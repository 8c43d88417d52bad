#pragma once

#include "geometry/field.h"
#include "input/table_reader.h"
#include "model/rule.h"

#include <optional>

namespace glim {

/// Reads which directions a row asks for, in degrees, by one of
///
///     field = { h = [-45, 45], v = [-15, 15] }
///     fields = [{ h = ..., v = ... }, ...]
///     points = [[-45, 0], [45, 0]]
///
/// H with the sign that the row states is turned to outboard-positive. |H| beyond 180, |V| beyond
/// 90 and ends in the wrong order are complaints. Nothing after a complaint.
std::optional<Field> read_field(TableReader& table, PositiveH positive);

} // namespace glim
