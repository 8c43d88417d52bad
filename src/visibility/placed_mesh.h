#pragma once

#include "geometry/placement.h"
#include "geometry/triangle_mesh.h"

namespace glim {

/// A mesh standing in the scene, and what it is to the lamp that is looked at.
struct PlacedMesh {
    const TriangleMesh* mesh; ///< outlives its user
    Placement placement;      ///< vehicle frame from the mesh's
    bool approved = false;    ///< the lamp itself, or in the way already when it was approved
    bool lit = false;         ///< a lit surface of this very lamp
};

} // namespace glim
