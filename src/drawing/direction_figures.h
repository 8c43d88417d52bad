#pragma once

#include "drawing/level_set.h"
#include "judgement/findings.h"

namespace glim {

/// Whether a row is judged by what is in view or by what is hidden.
bool asks_area(const RuleRow& row);

/// What one lamp shows under one row, direction by direction, ready to be drawn. Areas in mm2, one
/// a node of the grid.
struct DirectionFigures {
    FieldGrid grid;
    std::vector<std::size_t> at; ///< place in the look
    std::vector<Outcome> outcomes;
    std::vector<double> areas_mm2;   ///< in view; of rows of obstacles: hidden
    std::vector<double> margins_mm2; ///< above the threshold; of obstacles: tolerated less hidden
    std::vector<Bearing> passages;   ///< on grid lines, where the outcome is known to change
    std::vector<Bearing> between;    ///< directions between the nodes that are not met
};

/// Requires: the row looked in directions. `hairline` as in Sampling.
DirectionFigures figures_of(const RuleRow& row, const LampVerdict& verdict, const LampLook& look,
                            Length hairline);

/// The outline of where directions have that outcome.
std::vector<BearingLine> region_of(const DirectionFigures& figures, Outcome outcome);

/// Where directions stop being met.
std::vector<BearingLine> border_of_met(const DirectionFigures& figures);

} // namespace glim
