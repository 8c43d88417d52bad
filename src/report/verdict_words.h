#pragma once

#include "judgement/findings.h"
#include "report/text_block.h"

#include <string>
#include <vector>

namespace glim {

// What was found about one lamp under one row, for a designer to read. All require that the row
// applies to the lamp.

/// "at least 1250 mm2 in view, 45 deg inboard, 15 deg down to 15 deg up"
std::string demand_words(const LampVerdict& verdict, const LampLook& look);

/// "712.3 mm2 (exact), 537.7 mm2 too little; with nothing in the way 2310 mm2"
std::string least_words(const LampVerdict& verdict, const LampLook& look);

/// "45 deg inboard, 10 deg up (H -45, V 10)"
std::string worst_words(const LampVerdict& verdict, const LampLook& look);

/// "12 of 31 directions, 38.1 % of the field's solid angle"
std::string coverage_words(const Coverage& coverage);

/// A line for each range that is not covered, the largest first.
std::vector<std::string> uncovered_words(const LampVerdict& verdict, const LampLook& look);

/// A small table of the surfaces in the way, aligned; empty if there are none.
std::vector<std::string> blocker_table(const LampVerdict& verdict, const LampLook& look);

} // namespace glim
