#pragma once

#include "geometry/vector.h"

#include <cstdint>
#include <string>
#include <vector>

namespace glim {

/// Polygons on common points, as a file gives them: nothing joined, split or left out.
struct PolygonSoup {
    std::vector<Point> points;
    std::vector<std::uint32_t> corners; ///< of all polygons, one after the other
    std::vector<std::uint32_t> sizes;   ///< how many of them each polygon has
};

/// Has OpenMesh read PLY and takes what it reads before it becomes a half-edge mesh, which could
/// not hold degenerate, duplicate and non-manifold faces. Nothing if OpenMesh says that it failed.
/// Requires: what plain_ply.h wrote. Of other files OpenMesh leaves out what it does not understand
/// without a word, and a header that breaks off keeps it busy for ever.
PolygonSoup read_with_openmesh(const std::string& ply);

} // namespace glim
