#pragma once

#include "remedy/relief_ground.h"

namespace glim {

/// How deep a relief has to be for one demand, and what it could free at most.
struct DemandDepth {
    std::optional<double> depth_mm; ///< none where no depth is enough
    double needed_mm2 = 0;          ///< as the demand says, or all there is if it wants everything
    double seen_mm2 = 0;            ///< already, as sampled here
    double most_mm2 = 0;            ///< if nothing that may be pushed were in the way
    double within_mm2 = 0;          ///< seen if nothing is pushed further than the wish allows
    bool seen_from_under = false;   ///< see SightNeeds
};

/// What all lamps of a demand's look need toward it: one an eye. Throws nothing.
std::vector<SightNeeds> needs_of(const ReliefGround& ground, const ReliefDemand& demand,
                                 const LampLook& look);

/// In the order of the demands. Throws Stopped.
std::vector<DemandDepth> demand_depths(const ReliefGround& ground,
                                       const std::vector<ReliefDemand>& demands,
                                       const Findings& findings, const Workers& workers);

} // namespace glim
