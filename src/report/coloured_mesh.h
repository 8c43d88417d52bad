#pragma once

#include "drawing/blocking_mesh.h"

#include <string>

namespace glim {

// Surfaces in the way as mesh files, to be opened beside the surfaces in any viewer. Lengths in mm
// in the vehicle's frame, so that they lie on the study's own surfaces. Points are rounded: in PLY
// to floats (0.0003 mm at 4 m), in OBJ to 0.0001 mm.

/// PLY 1.0, binary, little-endian: each face with its colour, its surface (counted from 0 as listed
/// in the comments), its facet's place in the study's surface, and the mm2 that it takes.
std::string coloured_ply(std::span<const BlockingSurface> surfaces);

/// OBJ: each surface an object, each face with the material of its class of colour; the materials
/// stand in `material_file`.
std::string coloured_obj(std::span<const BlockingSurface> surfaces,
                         const std::string& material_file);

/// How many classes of colour the OBJ's faces fall into; class 0 takes nothing.
inline constexpr int colour_classes = 8;

/// The materials of coloured_obj(): the same for every mesh.
std::string colour_materials();

} // namespace glim
