#pragma once

#include "geometry/triangle_mesh.h"

namespace glim {

/// How each point of `mesh` moves when every facet moves along its outer normal by 1 mm: mm by mm.
/// Points in one place move alike, so that facets which do not share points stay together.
///
/// Along the mean of the normals there, weighed by the facets' angles, so far that each facet moves
/// by 1 mm on their mean: exact in a plane, along an edge and at the corner of a box; at most
/// `most_offset_stretch`, so that sharp spikes do not shoot out. The open edge of a plane piece
/// moves across the piece, never along it. Zero for points of no facet.
std::vector<Vector> normal_offsets(const TriangleMesh& mesh);

inline constexpr double most_offset_stretch = 2;

/// The mesh with every point moved by `by` times its offset. Folds tighter than `by` turn over.
TriangleMesh offset_by(const TriangleMesh& mesh, const std::vector<Vector>& offsets, Length by);

} // namespace glim
