#include "input/mesh_formats.h"

#include "input/read_obj.h"
#include "input/read_stl.h"

#include <array>

namespace glim {

namespace {

constexpr std::array formats = {
    MeshFormat{".obj", "OBJ", "polygons; names of objects, groups and materials; no unit",
               looks_like_obj, read_obj},
    MeshFormat{".stl", "STL", "triangles; in the ASCII kind names of solids; no unit",
               looks_like_stl, read_stl},
};

} // namespace

std::span<const MeshFormat> mesh_formats() { return formats; }

} // namespace glim
