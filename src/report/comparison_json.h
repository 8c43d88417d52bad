#pragma once

#include "remedy/comparison.h"
#include "report/json.h"

namespace glim {

/// comparison.json: every option with its answers, changes and costs, and the break-evens. Sums of
/// money as [low, likely, high].
Json comparison_json(const Comparison& comparison);

/// comparison.csv: a row an option, its answers by check, then what it changes and costs; likely
/// figures, empty where not known.
std::string comparison_csv(const Comparison& comparison);

} // namespace glim
