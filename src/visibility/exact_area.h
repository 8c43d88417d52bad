#pragma once

#include "geometry/direction.h"
#include "geometry/placement.h"
#include "geometry/polygons.h"

#include <span>

namespace glim {

struct ExactArea {
    Area visible;
    Area rounding; ///< the true area of the meshes as given is no further off than this
};

/// A mesh standing in the scene.
struct PlacedMesh {
    const TriangleMesh* mesh; ///< outlives the call
    Placement placement;      ///< vehicle frame from the mesh's
};

/// The visible area by projecting, clipping and uniting polygons: no rays, no samples, in double.
/// It goes by the same skip as rays do (visibility/touch.h). Costs time by the number of obstacle
/// triangles, so it is asked for the directions on which a verdict hangs.
class ExactView {
public:
    /// `lit` and `obstacles` in one frame; `touch` as in LampView.
    ExactView(TriangleMesh lit, std::vector<PlacedMesh> obstacles, Length touch);

    ExactArea toward(const Direction& toward) const;

private:
    TriangleMesh lit_;
    std::vector<PlacedMesh> obstacles_;
    Length touch_;
    Point
        origin_; ///< everything is shifted here first, so that rounding is that of the lamp's size
};

} // namespace glim
