#pragma once

#include "geometry/triangle_mesh.h"
#include "input/table_reader.h"

namespace glim {

/// Reads the key `box`, a table of two corners of the vehicle's frame: `least` and `most`. Nothing
/// after a complaint. `section` is the table's in model/study_keys.h.
std::optional<Box> read_box(TableReader& table, std::string_view section);

/// The same of a table that is itself the two corners.
std::optional<Box> read_corners(TableReader& box, std::string_view section);

/// The same of a list of boxes under any key; those that are in order.
std::vector<Box> read_boxes(TableReader& table, std::string_view key, std::string_view section);

} // namespace glim
