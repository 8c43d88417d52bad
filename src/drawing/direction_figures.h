#pragma once

#include "drawing/charted.h"
#include "drawing/level_set.h"
#include "judgement/findings.h"

namespace glim {

/// What one lamp shows under one row, direction by direction, ready to be drawn. Figures in mm2 or
/// cd, one a node of the grid.
struct DirectionFigures {
    FieldGrid grid;
    std::vector<std::size_t> at; ///< place in the look
    std::vector<Outcome> outcomes;
    std::vector<double> values;    ///< what is charted; no number where it is not known
    std::vector<double> margins;   ///< how far better than the threshold: below 0 it is not kept
    std::vector<Bearing> passages; ///< on grid lines, where the outcome is known to change
    std::vector<Bearing> between;  ///< directions between the nodes that are not met
};

/// Requires: the row looked in directions. `hairline` as in Sampling.
DirectionFigures figures_of(const RuleRow& row, const LampVerdict& verdict, const LampLook& look,
                            Length hairline);

/// The outline of where directions have that outcome.
std::vector<BearingLine> region_of(const DirectionFigures& figures, Outcome outcome);

/// Where directions stop being met.
std::vector<BearingLine> border_of_met(const DirectionFigures& figures);

} // namespace glim
