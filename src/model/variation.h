#pragma once

#include "model/tolerance.h"

namespace glim {

/// What differs from one vehicle to the next of its kind.
struct Variation {
    std::vector<Tolerance> tolerances;
    ToleranceTask task = {}; ///< of `tolerances`
};

} // namespace glim
