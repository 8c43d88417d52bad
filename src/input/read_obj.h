#pragma once

#include "model/mesh_file.h"

#include <string_view>

namespace glim {

/// Whether it is text and its first statement is one of OBJ; comments before do not count.
bool looks_like_obj(std::string_view text);

/// Reads OBJ, text of at most 2 GiB: points, faces (cut into triangles), names. No other file is
/// ever opened. Throws InputError with all complaints, `name` being the file's in them.
///
/// Numbers of points count from 1, or backwards from the last one if negative; a face may only use
/// points that stand before it. What else the format knows and does not make faces is passed over.
MeshFile read_obj(std::string_view text, const std::string& name);

} // namespace glim
