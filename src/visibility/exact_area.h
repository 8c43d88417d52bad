#pragma once

#include "geometry/direction.h"
#include "geometry/polygons.h"
#include "machine/workers.h"
#include "visibility/placed_mesh.h"

namespace glim {

struct ExactArea {
    Area visible;
    Area rounding; ///< the true area of the meshes as given is no further off than this
};

/// What things not approved with the lamp hide, of what the approved leave.
struct ExactHidden {
    Area hidden;
    Area rounding; ///< as in ExactArea; 0 where no such thing comes before the lit face
};

/// The visible area by projecting, clipping and uniting polygons: no rays, no samples, in double.
/// It goes by the same skip as rays do (visibility/touch.h). Costs time by the number of obstacle
/// triangles, so it is asked for the directions on which a verdict hangs.
class ExactView {
public:
    /// `lit` and `obstacles` in one frame; `touch` as in LampView.
    ExactView(TriangleMesh lit, std::vector<PlacedMesh> obstacles, Length touch);

    ExactArea toward(const Direction& toward) const;
    ExactHidden hidden_toward(const Direction& toward) const;
    /// The same to the last bit, with several threads at one direction. Throws Stopped.
    ExactArea toward(const Direction& toward, const Workers& workers) const;
    ExactHidden hidden_toward(const Direction& toward, const Workers& workers) const;

private:
    struct Scene;
    Scene scene_toward(const Direction& toward) const;

    TriangleMesh lit_;
    std::vector<PlacedMesh> obstacles_;
    std::vector<Box> boxes_; ///< of the obstacles, each in its mesh's own frame
    Length touch_;
    Point
        origin_; ///< everything is shifted here first, so that rounding is that of the lamp's size
};

} // namespace glim
