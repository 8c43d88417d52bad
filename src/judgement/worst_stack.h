#pragma once

#include "judgement/build_runs.h"
#include "judgement/tolerance_findings.h"

namespace glim {

/// Up to so many corners all of them are looked at.
inline constexpr std::size_t most_corners = 1024;

/// For each followed verdict the deviations, each at one of its `limits`, with which it stands
/// worst: by looking at all corners where these are few, else from where `slopes` (one list a
/// verdict: how its standing changes with each factor) point, by the best single change each time
/// until none is better. None where the work was stopped or nothing varies.
std::vector<std::optional<StackUp>> worst_stacks(const BuiltLooks& looks,
                                                 const std::vector<double>& limits,
                                                 const std::vector<std::vector<double>>& slopes,
                                                 const Workers& workers);

} // namespace glim
