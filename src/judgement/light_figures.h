#pragma once

#include "judgement/plan.h"

namespace glim {

/// How far the light that is left exceeds what the row needs there, as a share of it: negative
/// where it falls short, -1 where nothing is known. Of a row that asks for the most, how far the
/// lamp's own light stays below it. Requires: the row asks for light and the look has it.
double light_margin(const RuleRow& row, const LampLook& look, std::size_t at,
                    const Multiplier& multiplier);

/// What the row asks there, multiplied by the least multiplier.
Intensity light_needed(const RuleRow& row, const Bearing& toward, const Multiplier& multiplier);

/// Of the groups of a table of light, added up over the points among the verdict's directions;
/// their totals go down by the least of points that fall away. A group all of whose points are in
/// view is decided by the file; one with a hidden point has its proof due, unless the whole lamp's
/// light is too little.
std::vector<GroupOfLight> groups_of(const LightTable& table, const LampVerdict& verdict,
                                    const LampLook& look, const Multiplier& multiplier);

/// Fills `light` and `estimate` of a verdict whose directions and worst one are known, and lets its
/// groups have their say in its outcome. Requires: as light_margin.
void add_light_figures(LampVerdict& verdict, const RuleRow& row, const LampLook& look,
                       const Multiplier& multiplier);

} // namespace glim
