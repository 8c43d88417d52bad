#pragma once

#include "geometry/triangle_mesh.h"

namespace glim {

/// Facets that meet at more than this are parted by an edge of the design; at less, they stand for
/// one smooth surface.
inline constexpr Angle crease = degrees(30);

/// Of the surface's area, at least this share lies nearer to what it stands for than is said.
inline constexpr double share_within_chord_error = 0.95;

/// How far the mesh lies from the smooth surface that it was cut from, as far as its facets tell.
///
/// Over an edge where two facets of height h meet at an angle t the surface arches by t h / 8: a
/// cylinder of radius R cut into steps of s has h = R s, t = s and lies R s^2 / 8 from its facets.
/// A facet's figure is the sum over its edges, since in a doubly curved surface each adds its own
/// (for a sphere of equilateral facets one eighth too much); the mesh's is not exceeded on 95 % of
/// its area. Open edges, creases, and edges of more than two facets tell nothing. 0 for a plane.
/// Requires: points welded (see `welded`).
Length chord_error(const TriangleMesh& mesh);

} // namespace glim
