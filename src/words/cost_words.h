#pragma once

#include "remedy/comparison.h"

#include <string>

namespace glim {

// What an option costs, with the arithmetic, so that it can be checked by hand. Sums are of what is
// known; whatever tells them has to tell what is left out, too.

/// "parts 14 + harness 5.5 + fitting 2 = 21.5 EUR"
std::string cost_arithmetic(const CostSum& cost, CostBasis basis, const std::string& currency);

/// "240,000 vehicles x 21.5 + 62,000 = 5,222,000 EUR"; why not, where the vehicles are not known.
std::string programme_arithmetic(const CostSum& cost, const Programme& programme);

/// "harness and engineering changes: not known"; empty where nothing is missing.
std::string missing_words(const CostSum& cost);

/// "Relief costs less than added lamp from 13,474 vehicles on ..." in one sentence or two.
std::string break_even_words(const BreakEvenBetween& between, const Comparison& comparison);

} // namespace glim
