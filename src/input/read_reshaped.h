#pragma once

#include "input/table_reader.h"
#include "model/mesh_file.h"

#include <optional>

namespace glim {

/// What a surface looks like instead of the facets that it takes.
struct ReshapedDraft {
    TriangleMesh mesh; ///< vehicle frame, mm
    SourceFile file;   ///< named as it was opened
};

/// Reads the key `reshaped` of a surface's table and the mesh file that it names, which lies in the
/// frame of the vehicle, in mm, as results are written; nothing where there is no such key, or
/// after a complaint.
std::optional<ReshapedDraft> read_reshaped(TableReader& surface);

} // namespace glim
