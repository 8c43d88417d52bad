#pragma once

#include "geometry/direction.h"
#include "geometry/triangle_mesh.h"

#include <cstdint>
#include <vector>

namespace glim {

/// What a field of depths has to keep to.
struct FieldRules {
    double slope = 1;    ///< steepest, mm of depth a mm in the plane across the push
    double blend_mm = 0; ///< radius of the rim
};

/// Half the band of depths, about 0, in which a rim of that radius runs out: between a plane and a
/// slope of angle s the fillet of radius r touches both r tan(s/2) from where they meet.
double blend_band(const FieldRules& rules);

/// How deep each point may be: none at those that are `held` (one byte a point), and beside them no
/// more than a slope that rises from them with the blend; `no_depth` where none is near.
std::vector<double> depth_caps(const TriangleMesh& mesh, const Direction& push,
                               const std::vector<std::uint8_t>& held, const FieldRules& rules,
                               double deepest_mm);

/// The smallest field of depths of that slope that is nowhere less than `wanted`: the cones of that
/// slope on all wanted depths, over the plane across the push. It goes on below 0 down to -band
/// around the rim; elsewhere it is -infinity.
std::vector<double> cones_over(const TriangleMesh& mesh, const Direction& push,
                               const std::vector<double>& wanted, const FieldRules& rules,
                               double band_mm);

/// Depths that a modeller would accept: cones over what is wanted, the hollows between them filled,
/// the rim blended, and all of it below `caps`. Where caps allow, nowhere less than `wanted`, and
/// nowhere deeper than the deepest of it. Between neighbouring points no steeper than the slope.
std::vector<double> faired_depths(const TriangleMesh& mesh, const Direction& push,
                                  const std::vector<double>& wanted,
                                  const std::vector<double>& caps, const FieldRules& rules);

} // namespace glim
