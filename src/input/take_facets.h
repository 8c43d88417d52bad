#pragma once

#include "input/study_surfaces.h"

namespace glim {

/// How far over the median plane a surface must reach on both sides to straddle it, and how far a
/// half may reach over it before we ask: trimmed edges end on the plane only to a fraction of this.
inline constexpr Length median_grain = millimetres(1);

/// Fills in the facets of every surface, and its mesh. What selects nothing, what two surfaces
/// select, what is said to straddle the median plane and does not: complaints, at the surface; a
/// mesh of which all that has a twin lies on the side that is not modelled: one at the mesh.
void take_facets(std::vector<SurfaceDraft>& surfaces, const std::vector<MeshDraft>& meshes,
                 const Vehicle& vehicle, Complaints& complaints);

/// How far a mesh reaches to the left and to the right of the median plane; negative if it does
/// not.
struct Reach {
    Length left;
    Length right;
};
Reach reach_of(const TriangleMesh& mesh, const Vehicle& vehicle);

} // namespace glim
