#pragma once

#include "remedy/least_depth.h"
#include "remedy/relief.h"

namespace glim {

/// Where the least depth comes from: what of which surface has to sink so deep toward the demand's
/// direction, and whether it lies across its push. Fills `surface`, `place` and `height_field`.
void set_deciding_place(LeastDepth& least, const ReliefGround& ground, const ReliefDemand& demand,
                        const LampLook& look);

/// The fixed part that hides most of a look's lamps toward a demand's direction; empty where none
/// hides anything.
std::string fixed_part_in_the_way(const ReliefGround& ground, const ReliefDemand& demand,
                                  const LampLook& look);

} // namespace glim
