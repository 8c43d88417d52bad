#pragma once

#include "geometry/triangle_mesh.h"

namespace glim {

/// How far it is from `start` to each facet's centre: straight through the air to the nearest
/// corner of each connected piece of the surfaces, then along the piece, over edges and straight
/// across pairs of facets. Longer than the shortest way along the surface, by a few percent on
/// even meshes. One list a mesh, one figure a facet. Requires: points welded.
std::vector<std::vector<Length>> distances_along(std::span<const TriangleMesh* const> meshes,
                                                 const Point& start);

} // namespace glim
