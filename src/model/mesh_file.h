#pragma once

#include "geometry/triangle_mesh.h"
#include "model/source_file.h"

#include <string>

namespace glim {

/// What a file calls a run of faces. A format without a notion leaves it empty.
struct MeshPart {
    std::string object;   ///< OBJ `o`
    std::string group;    ///< OBJ `g` (all names of the line), STL solid
    std::string material; ///< OBJ `usemtl`
    friend bool operator==(const MeshPart&, const MeshPart&) = default;
};

/// A mesh as its file gives it: in the file's own unit and axes, points welded to the last bit.
struct MeshFile {
    std::string format;          ///< "OBJ", "STL (binary)", "STL (ASCII)"
    TriangleMesh mesh;           ///< coordinates in the *file's* unit, not yet millimetres
    std::vector<MeshPart> parts; ///< in order of first use; every one has a facet
    std::vector<std::uint32_t> part_of_facet; ///< place in `parts`, one a facet
    std::size_t points_in_file = 0;           ///< before welding
    std::size_t polygons_in_file = 0;         ///< before triangulation
    /// Polygons that cross themselves: each became a fan, so its triangles may overlap.
    std::size_t crossed_polygons = 0;
    /// Free-form surfaces (OBJ), which are not read: what they would hide is missing.
    std::size_t curved_surfaces = 0;
    int decimals = 0;     ///< significant digits of the coordinates, at most (7 for binary floats)
    FileIdentity is = {}; ///< of the file; empty where a reader was given bytes alone
};

} // namespace glim
