#pragma once

#include "geometry/triangle_mesh.h"

namespace glim {

/// The point of the facet, edges and corners included, that is nearest to `p`. A facet without area
/// is the line or point that it is.
Point nearest_on_facet(const TriangleMesh& mesh, std::size_t facet, const Point& p);

Length distance_to_facet(const TriangleMesh& mesh, std::size_t facet, const Point& p);

} // namespace glim
