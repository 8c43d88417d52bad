#pragma once

#include "geometry/triangle_mesh.h"

namespace glim {

/// Into so many straight pieces a full circle about the end of an open edge is cut. The circle's
/// polygon lies within it, so that an inset of r is short by r (1 - cos(180 deg / 64)) at most
/// there: 0.006 mm for 5 mm.
inline constexpr int inset_circle_pieces = 64;

/// The surface without the points that lie nearer than `by`, in space, to one of its open edges:
/// facets are cut in their own planes, and wound as before. In space and not in some projection,
/// because a lens that wraps round the corner of the vehicle is seen edge on along its axis. Open
/// edges are those of one facet, repeated facets counting once.
/// Requires: by > 0.
TriangleMesh inset(const TriangleMesh& mesh, Length by);

} // namespace glim
