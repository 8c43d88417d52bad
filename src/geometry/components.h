#pragma once

#include "geometry/triangle_mesh.h"

namespace glim {

/// For each facet the number of its connected component, over shared corners, counted from 0 in
/// the order of the components' first facets. Requires: points welded (see `welded`), or what
/// touches only in space counts as apart.
std::vector<std::uint32_t> components_of(const TriangleMesh& mesh);

} // namespace glim
