#pragma once

#include "model/mesh_file.h"

#include <string_view>

namespace glim {

/// Whether the first word is `OFF`, perhaps with the letters ST, C or N before it for texture,
/// colour and normal at each point.
bool looks_like_off(std::string_view bytes);

/// Reads OFF text, one point or face a line, at most 2 GiB: every number is checked here, and then
/// OpenMesh reads points and corners. What stands behind the corners of a face is passed over.
/// Throws InputError with all complaints, `name` being the file's in them.
MeshFile read_off(std::string_view text, const std::string& name);

} // namespace glim
