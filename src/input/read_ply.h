#pragma once

#include "model/mesh_file.h"

#include <string_view>

namespace glim {

/// Whether its first line is `ply`.
bool looks_like_ply(std::string_view bytes);

/// Reads PLY 1.0, text or binary of either byte order, at most 2 GiB: every number is checked here,
/// and then OpenMesh reads points and corners. Properties and elements of other names are passed
/// over; a whole number that a face has besides its corners and colours names its part. Throws
/// InputError with all complaints, `name` being the file's in them.
MeshFile read_ply(std::string_view bytes, const std::string& name);

} // namespace glim
