#pragma once

#include "geometry/direction.h"
#include "model/surface.h"

namespace glim {

/// Below this share a push counts as parallel to a surface: that of a plane 2 degrees off it. Such
/// a push moves a surface along itself.
inline constexpr double least_push_share = 0.0349;

/// Which way a surface is pushed in, vehicle frame: as it says, else against the mean of its
/// facets' normals. Nothing where it says nothing and its normals add up to less than
/// `least_push_share` of its area, as those of a closed body do.
/// Requires: the surface may be reshaped.
std::optional<Direction> push_of(const Surface& surface);

/// The mesh's area as it counts across the push, folds not subtracted, as a share of its area: 1
/// for a plane pushed squarely, 0 for one pushed along itself. 0 for a mesh without area.
double share_across(const TriangleMesh& mesh, const Direction& push);

} // namespace glim
