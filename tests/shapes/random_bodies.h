#pragma once

#include "geometry/triangle_mesh.h"
#include "shapes/random_numbers.h"

#include <array>
#include <string_view>

namespace glim::shapes {

/// Where an obstacle is made: about a point of the lit face, in the way of one direction.
struct Spot {
    Point at;
    Vector normal;    ///< of the lit facet there, unit
    Direction toward; ///< where the eye is
    double pitch_mm;  ///< of the lattice
    double touch_mm;
    const TriangleMesh* lit; ///< all of it
};

/// Kinds of body that are hard on an area: each row makes one, at random.
struct LitKind {
    std::string_view name;
    TriangleMesh (*make)(RandomNumbers&);
};
struct ObstacleKind {
    std::string_view name;
    TriangleMesh (*make)(RandomNumbers&, const Spot&);
};

/// About the origin, looking about along +x, 6 to 30 mm across.
std::span<const LitKind> lit_kinds();
std::span<const ObstacleKind> obstacle_kinds();

} // namespace glim::shapes
