#pragma once

#include "geometry/triangle_mesh.h"

namespace glim::bench {

inline constexpr std::size_t part_count = 20;

/// A made-up front of a vehicle, whole, in 20 parts of about equal size, and a curved signal lamp
/// of 3600 facets that sits in its left corner. Frame: x ahead, y left, z up, mm; the front stands
/// some 3.7 m before the origin, as in vehicle coordinates.
struct Body {
    std::vector<TriangleMesh> parts; ///< 16 patches of skin, bezel, grille bars, edge, guard
    TriangleMesh lens;
};

/// With about so many triangles in its parts; never less than 20 x 8.
Body body_of(std::size_t triangles);

/// One of the parts as a stylist might have changed it: every point moved by up to `by` mm.
TriangleMesh reshaped(const TriangleMesh& part, double by);

} // namespace glim::bench
