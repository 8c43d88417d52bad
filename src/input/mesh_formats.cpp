#include "input/mesh_formats.h"

#include "input/read_obj.h"
#include "input/read_off.h"
#include "input/read_ply.h"
#include "input/read_stl.h"

#include <array>

namespace glim {

namespace {

constexpr std::array formats = {
    MeshFormat{".obj", "OBJ", "polygons; names of objects, groups and materials; no unit",
               looks_like_obj, read_obj},
    MeshFormat{".stl", "STL", "triangles; in the ASCII kind names of solids; no unit",
               looks_like_stl, read_stl},
    MeshFormat{".ply", "PLY",
               "polygons; a whole number at each face names its part; coordinates of 7 digits; no "
               "unit",
               looks_like_ply, read_ply},
    MeshFormat{".off", "OFF", "polygons; coordinates of 7 digits; no names; no unit",
               looks_like_off, read_off},
};

} // namespace

std::span<const MeshFormat> mesh_formats() { return formats; }

} // namespace glim
