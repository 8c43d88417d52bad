#pragma once

#include "geometry/triangle_mesh.h"

#include <string>
#include <vector>

namespace glim::demo {

struct Part {
    std::string name; ///< OBJ object and group
    std::string material;
    TriangleMesh mesh; ///< in the generator's frame, see `body_surface`
};

/// The parts as OBJ text in the vehicle's frame (y = -w, winding turned), millimetres with three
/// decimals. Points that are equal when rounded are written once; facets that lose their area by it
/// are dropped.
std::string obj_text(const std::string& title, const std::vector<Part>& parts);

} // namespace glim::demo
