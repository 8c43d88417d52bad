#pragma once

#include "geometry/triangle_mesh.h"
#include "machine/workers.h"
#include "remedy/clear_space.h"

#include <span>

namespace glim {

/// Spaces that a surface counts for.
using SpaceList = std::vector<const ClearSpace*>;

/// Whether one of the spaces may reach into the hull of these places, vehicle frame: see
/// SightSheaf::may_meet.
bool may_meet(const SpaceList& spaces, std::span<const Point> corners);

/// Whether one of the spaces may reach into what a facet sweeps when its corners go `by` along
/// `normals` (one a point of the mesh).
struct SweptFacet {
    const TriangleMesh& mesh;
    std::size_t facet;
    const std::vector<Vector>& normals;
    Length by;
};
bool may_meet(const SpaceList& spaces, const SweptFacet& swept);

/// A surface parted into what may meet a space on a way of `farthest_way_in` along its normals, and
/// the rest.
struct NearFacets {
    TriangleMesh near;                 ///< and all facets that share a point with those
    std::vector<std::uint8_t> is_near; ///< one a facet of `near`; 0 for those that share a point
    TriangleMesh rest;
};

/// Requires: points welded. Throws Stopped.
NearFacets near_facets(const TriangleMesh& mesh, const SpaceList& spaces, const Workers& workers);

} // namespace glim
