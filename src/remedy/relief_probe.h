#pragma once

#include "machine/workers.h"
#include "remedy/relief_demand.h"
#include "visibility/prepared_scene.h"

namespace glim {

/// What one demand's direction sees now, as sampled, and how far a verdict on it may be off.
struct ProbedSight {
    Area visible;
    Area doubt; ///< through the meshes, as judgement reckons it, and through sampling
};

/// In the order of the demands: a look at just these directions, where a check would look at all.
/// Throws Stopped.
std::vector<ProbedSight> probed_sights(const Study& study, const PreparedScene& scene,
                                       const std::vector<ReliefDemand>& demands,
                                       const Findings& findings, const Workers& workers);

} // namespace glim
