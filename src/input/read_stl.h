#pragma once

#include "model/mesh_file.h"

#include <string_view>

namespace glim {

/// Whether it is binary STL of the very size that its own count of facets demands, or its first
/// word is `solid`.
bool looks_like_stl(std::string_view bytes);

/// Reads STL of either kind, at most 2 GiB, and tells them apart by size and content: a binary file
/// may well begin with "solid". Normals in the file are not looked at: the corners' order counts.
/// Throws InputError with all complaints, `name` being the file's in them.
MeshFile read_stl(std::string_view bytes, const std::string& name);

} // namespace glim
