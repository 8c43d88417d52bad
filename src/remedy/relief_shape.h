#pragma once

#include "remedy/relief.h"
#include "remedy/relief_plan.h"

namespace glim {

/// A patch as a plan reshapes it.
struct ReshapedPatch {
    NumberedMesh mesh;          ///< as it was, divided where it changes
    std::vector<double> depths; ///< one a point, mm
    std::vector<double> wanted; ///< what lines of sight ask for, slopes free
};

/// One a patch. Throws Stopped.
std::vector<ReshapedPatch> reshaped_patches(const ReliefGround& ground, const ReliefPlan& plan,
                                            const Workers& workers);

/// The patch's mesh with every point pushed.
TriangleMesh pushed_mesh(const ReshapedPatch& reshaped, const Direction& push);

/// The figures of a relief, but for what lies behind it.
ReliefShape shape_of(const ReliefGround& ground, const std::vector<ReshapedPatch>& reshaped);

/// What slope and blend cost beside the depths that are wanted.
SlopeCost slope_cost(const ReliefGround& ground, const std::vector<ReshapedPatch>& reshaped,
                     double deepest_with_free_slopes_mm);

/// What lies nearest behind the pushed points, of everything in the study that is not pushed; none
/// where nothing does. `scene` holds the fixed surfaces.
std::optional<RoomBehind> nearest_behind(const ReliefGround& ground, const PreparedScene& scene,
                                         const std::vector<ReshapedPatch>& reshaped);

} // namespace glim
