#pragma once

#include "geometry/triangle_mesh.h"

namespace glim {

/// Prisms that stand side by side on the triangles of a plan.
struct PrismBody {
    TriangleMesh plan;                     ///< z = 0, counter-clockwise, corners shared
    std::vector<double> bottom_mm, top_mm; ///< over the plan's points
};

/// Where top and bottom meet, the top is raised so far, lest walls have no height.
inline constexpr Length least_height = millimetres(0.01);

/// The body as one closed mesh, wound outward: top, bottom, and a wall along every open edge of the
/// plan. Where pieces touch in a corner of the plan only, each has its own corner, so that every
/// edge has two facets. Points of no triangle are gone.
TriangleMesh closed_mesh(const PrismBody& body);

/// Of a closed mesh that is wound outward.
Volume enclosed_volume(const TriangleMesh& mesh);

} // namespace glim
