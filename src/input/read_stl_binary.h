#pragma once

#include "model/mesh_file.h"

#include <string_view>

namespace glim {

/// 80 bytes of title, a count, and 50 bytes a facet, not one more or less.
bool has_exact_size_of_binary_stl(std::string_view bytes);

/// Reads binary STL: little-endian floats, whatever the machine. A file of another size than its
/// count demands is refused, and so is a coordinate that is not finite or beyond
/// `largest_coordinate`. Throws InputError with all complaints, each with its byte, from 0.
MeshFile read_stl_binary(std::string_view bytes, const std::string& name);

} // namespace glim
