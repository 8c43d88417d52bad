#pragma once

#include "input/plain_ply.h"
#include "model/mesh_file.h"

#include <vector>

namespace glim {

/// The mesh of a checked file, read by OpenMesh from its plain writing: polygons cut into
/// triangles, points welded. Format and digits are the caller's to fill in.
///
/// `part_of_polygon` has a place in `parts` for each polygon. Throws InputError, `name` being the
/// file's, where OpenMesh returns other counts of points, faces or corners than were handed over,
/// or where floats are too coarse for a mesh so far from its origin.
MeshFile mesh_of_polygons(const PlainPly& plain, std::vector<MeshPart> parts,
                          const std::vector<std::uint32_t>& part_of_polygon,
                          const std::string& name);

} // namespace glim
