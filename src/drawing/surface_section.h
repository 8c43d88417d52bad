#pragma once

#include "geometry/direction.h"
#include "geometry/triangle_mesh.h"

#include <span>

namespace glim {

/// A place where a plane cuts a mesh.
struct SectionPoint {
    Point at;
    double figure = 0; ///< of the mesh's points, interpolated along the edge
};

struct SectionLine {
    std::vector<SectionPoint> points;
    bool closed = false; ///< a closed line does not repeat its first point
};

/// Where the plane through `on` cuts the mesh: lines joined over shared edges. `figures` has one a
/// point of the mesh, or none. A corner on the plane counts as before it, along `normal`.
std::vector<SectionLine> surface_section(const TriangleMesh& mesh, std::span<const double> figures,
                                         const Point& on, const Direction& normal);

} // namespace glim
