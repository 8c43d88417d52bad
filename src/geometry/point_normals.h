#pragma once

#include "geometry/triangle_mesh.h"

namespace glim {

/// The unit normal at each point: the mean of the normals of the facets there, weighed by the
/// angles that they have there, so that it does not depend on how a flat piece is divided. Zero
/// for points of no facet, and where facets face each other. Requires: points welded.
std::vector<Vector> point_normals(const TriangleMesh& mesh);

} // namespace glim
