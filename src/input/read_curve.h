#pragma once

#include "geometry/vector.h"

#include <filesystem>
#include <string_view>
#include <vector>

namespace glim {

/// The closed curve in an OBJ file: its points (`v`), in mm and the vehicle's axes, in the order of
/// its lines (`l`), which must follow each other. A last point equal to the first is left out.
/// Throws InputError with all complaints, `name` being the file's in them.
std::vector<Point> read_curve(std::string_view text, const std::string& name);

} // namespace glim
