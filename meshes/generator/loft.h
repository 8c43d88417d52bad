#pragma once

#include "geometry/triangle_mesh.h"

#include <array>
#include <vector>

namespace glim::demo {

/// Two triangles, along the shorter diagonal; one where two neighbours are the same point.
void add_quad(TriangleMesh& mesh, const std::array<std::uint32_t, 4>& corners);

/// Sections of equally many points each, to be joined in their order.
using Loft = std::vector<std::vector<Point>>;

/// The surface through the sections, each quad cut along its shorter diagonal. The side that looks
/// at you has the sections running to the right and their points running upward.
TriangleMesh skinned(const Loft& loft);

/// `more` added to `mesh`; equal points are joined by the writer.
void append(TriangleMesh& mesh, const TriangleMesh& more);

TriangleMesh turned_inside_out(TriangleMesh mesh);

/// The mesh, or its other face, whichever looks more towards `side`. Requires: it does not look
/// equally both ways, as closed shapes do.
TriangleMesh facing(TriangleMesh mesh, const Vector& side);

} // namespace glim::demo
