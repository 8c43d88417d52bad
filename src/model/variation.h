#pragma once

#include "model/ride_state.h"
#include "model/tolerance.h"

namespace glim {

/// What differs from one vehicle to the next of its kind, and from one moment to another.
struct Variation {
    std::vector<Tolerance> tolerances;
    ToleranceTask task = {}; ///< of `tolerances`
    std::vector<RideState> states;
    std::vector<MovedPart> moved_parts;
};

} // namespace glim
