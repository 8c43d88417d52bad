#pragma once

#include "generator/obj_file.h"
#include "generator/skin.h"

namespace glim::demo {

/// Tyre, rim and the liner of the wheel house.
std::vector<Part> wheel_parts();

/// What stands on the windscreen's foot: glass, and the pillar beside it.
std::vector<Part> cab_parts(const Skin& skin);

} // namespace glim::demo
