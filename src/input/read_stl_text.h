#pragma once

#include "model/mesh_file.h"

#include <string_view>

namespace glim {

/// Whether the first word is `solid`, in upper or lower case.
bool begins_with_solid(std::string_view text);

/// Reads ASCII STL, one statement a line, in upper or lower case; several solids may follow each
/// other, and each name (the rest of the line) becomes the group of its facets. Throws InputError
/// with all complaints, `name` being the file's in them.
MeshFile read_stl_text(std::string_view text, const std::string& name);

} // namespace glim
