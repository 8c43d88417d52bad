#pragma once

#include "judgement/findings.h"
#include "words/text_block.h"

#include <string>
#include <vector>

namespace glim {

// What was found about one lamp under one row, for a designer to read. All require that the row
// applies to the lamp; what takes areas or directions requires that it has areas.

/// "at least 1250 mm2 in view, 45 deg inboard, 15 deg down to 15 deg up"
std::string demand_words(const RuleRow& row, const LampVerdict& verdict, const LampLook& look);

/// "537.7 mm2 too little", "12.3 mm2 more than needed"
std::string spare_words(Area margin);

/// "712.3 mm2 (exact), 537.7 mm2 too little; with nothing in the way 2310 mm2"
std::string least_words(const LampVerdict& verdict, const LampLook& look);

/// "120 mm2 of 2310 mm2 (exact); up to 0.3 mm2 counts as touching"
std::string hidden_words(const LampVerdict& verdict, const LampLook& look);

/// "areas there may be off by 3.2 mm2 ...: an estimate"
std::string mesh_error_words(const LampVerdict& verdict);

/// How far the answer holds between the directions looked at.
std::string between_words(const LampVerdict& verdict);

/// Where on the line of the worst direction the outcome changes: "38.4 deg inboard, level, within
/// 0.06 deg".
std::vector<std::string> crossing_words(const LampVerdict& verdict, const LampLook& look);

/// A line for each figure of place: "lowest point ...: 512.3 mm, at least 350 mm".
std::vector<std::string> measured_words(const LampVerdict& verdict);

/// "512.3 mm", "2.5 deg", "61.2 %"
std::string measure_words(double figure, FigureUnit unit);

/// What is nearest to its limit. Requires: something was measured.
const Measurement& tightest(const LampVerdict& verdict);

/// The figure nearest to its limit. Requires: something was measured.
std::string tightest_words(const LampVerdict& verdict);

/// "45 deg inboard, 10 deg up (H -45, V 10)"
std::string worst_words(const LampVerdict& verdict, const LampLook& look);

/// "12 of 31 directions, 38.1 % of the field's solid angle; 13 not met, 6 undecided"
std::string coverage_words(const LampVerdict& verdict);

/// A line for each range that is not covered, the largest first.
std::vector<std::string> uncovered_words(const LampVerdict& verdict, const LampLook& look);

} // namespace glim
