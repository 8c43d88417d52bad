#pragma once

#include "model/mesh_file.h"

#include <span>
#include <string_view>

namespace glim {

/// One kind of mesh file. The reading, the complaints and the manual stand on the same rows.
struct MeshFormat {
    std::string_view ending; ///< in lower case; upper case in a name is the same
    std::string_view name;
    std::string_view carries; ///< what survives the reading, for the user's manual
    bool (*looks_like)(std::string_view bytes);
    /// Throws InputError with all complaints; `name` is the file's in them.
    MeshFile (*read)(std::string_view bytes, const std::string& name);
};

std::span<const MeshFormat> mesh_formats();

} // namespace glim
