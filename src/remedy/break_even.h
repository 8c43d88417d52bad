#pragma once

#include "remedy/cost_sum.h"

#include <cstddef>

namespace glim {

/// From how many vehicles on one option costs less than another: where once + n x a vehicle is the
/// same for both.
struct BreakEven {
    /// At likely costs; none where one option is the cheaper one at any number of vehicles, or both
    /// cost the same.
    std::optional<double> vehicles;
    /// The least and the most that the ranges allow, where they allow one at all.
    std::optional<double> least, most;
    bool always = true;    ///< there is one wherever within their ranges the costs lie
    bool one_below = true; ///< the first costs less below it (or, without one, at any number)
    bool alike = false;    ///< both cost the same, at any number
};

/// Both sums count with what is known of them alone: whoever tells it has to say what is missing.
BreakEven break_even(const CostSum& one, const CostSum& other);

} // namespace glim
