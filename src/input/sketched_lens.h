#pragma once

#include "geometry/triangle_mesh.h"
#include "input/table_reader.h"

namespace glim {

struct SketchedLens {
    TriangleMesh mesh;
    std::size_t facets_of_file = 0; ///< 0: drawn from figures
};

/// Reads [lens] of a sketch: a flat rectangle, a part of an upright cylinder, or a mesh. Facets
/// look outward; x forward, y outboard of a lamp on the left, z up, mm, the middle of its box at
/// zero. Nothing after a complaint.
std::optional<SketchedLens> read_sketched_lens(TableReader& top);

} // namespace glim
