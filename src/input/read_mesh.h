#pragma once

#include "model/mesh_file.h"

#include <filesystem>

namespace glim {

/// The mesh in `file`, its format told by the ending (see mesh_formats.h). Everything real is kept:
/// duplicate, degenerate and non-manifold facets too. Throws InputError with all complaints, in
/// which the file is called `name_for_messages`.
MeshFile read_mesh(const std::filesystem::path& file, const std::string& name_for_messages);

} // namespace glim
