#include "drawing/direction_figures.h"

#include "judgement/direction_outcome.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// mm2. A direction that fails for other reasons than its area stands this far below.
constexpr double just_below = 1e-6;

std::vector<Bearing> nodes_of(const LampVerdict& verdict, const LampLook& look)
{
    std::vector<Bearing> nodes;
    for (const DirectionVerdict& d : verdict.directions)
        if (!d.between)
            nodes.push_back(look.toward[d.at]);
    return nodes;
}

Area margin_at(const RuleRow& row, const LampLook& look, std::size_t at, Length hairline)
{
    if (const auto* least = std::get_if<LeastArea>(&row.criterion))
        return look.visible(at) - least->area;
    if (const auto* most = std::get_if<MostHidden>(&row.criterion))
        return look.approved(at) * most->share - look.hidden(at);
    return tolerated_at(look, at, hairline) - look.hidden(at);
}

/// Of an area, where it falls to what is needed on the short way between the two directions, if it
/// does: beside a direction that is undecided it need not.
Bearing passage_of(const Crossing& c, const RuleRow& row)
{
    double share = 0.5;
    if (const auto* least = std::get_if<LeastArea>(&row.criterion))
        if (c.visible_met > least->area && c.visible_unmet < least->area)
            share = (c.visible_met - least->area) / (c.visible_met - c.visible_unmet);
    return {c.met.h + (c.unmet.h - c.met.h) * share, c.met.v + (c.unmet.v - c.met.v) * share};
}

/// Below 0 exactly where directions are not met.
std::vector<double> standing_of(const DirectionFigures& f)
{
    std::vector<double> standing = f.margins_mm2;
    for (std::size_t i = 0; i < standing.size(); ++i)
        standing[i] = f.outcomes[i] == Outcome::met ? std::max(standing[i], 0.0)
                                                    : std::min(standing[i], -just_below);
    return standing;
}

} // namespace

bool asks_area(const RuleRow& row) { return std::holds_alternative<LeastArea>(row.criterion); }

DirectionFigures figures_of(const RuleRow& row, const LampVerdict& verdict, const LampLook& look,
                            Length hairline)
{
    DirectionFigures f{.grid = {nodes_of(verdict, look), verdict.field},
                       .at = {},
                       .outcomes = {},
                       .areas_mm2 = {},
                       .margins_mm2 = {},
                       .passages = {},
                       .between = {}};
    for (const DirectionVerdict& d : verdict.directions) {
        if (d.between) {
            if (d.outcome != Outcome::met)
                f.between.push_back(look.toward[d.at]);
            continue;
        }
        f.at.push_back(d.at);
        f.outcomes.push_back(d.outcome);
        f.areas_mm2.push_back(in_mm2(asks_area(row) ? look.visible(d.at) : look.hidden(d.at)));
        f.margins_mm2.push_back(in_mm2(margin_at(row, look, d.at, hairline)));
    }
    for (const Crossing& c : verdict.crossings)
        f.passages.push_back(passage_of(c, row));
    return f;
}

std::vector<BearingLine> region_of(const DirectionFigures& figures, Outcome outcome)
{
    std::vector<double> standing = standing_of(figures);
    for (std::size_t i = 0; i < standing.size(); ++i)
        if (figures.outcomes[i] != outcome)
            standing[i] = std::abs(standing[i]);
    return level_set(figures.grid, standing, 0, figures.passages).below;
}

std::vector<BearingLine> border_of_met(const DirectionFigures& figures)
{
    return level_set(figures.grid, standing_of(figures), 0, figures.passages).border;
}

} // namespace glim
