#include "drawing/direction_figures.h"

#include "judgement/direction_outcome.h"
#include "judgement/light_figures.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace glim {

namespace {

/// mm2, or cd. A direction that fails for other reasons than its figure stands this far below.
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

/// A figure with its margin.
struct Charting {
    double value, margin;
};

Charting charted_light(const RuleRow& row, const LampLook& look, std::size_t at,
                       const Multiplier& multiplier)
{
    const bool own = charted_by(row) == Charted::own_light;
    const std::optional<Intensity> light = own ? look.light->toward[at].whole : look.light_left(at);
    if (!light)
        return {std::numeric_limits<double>::quiet_NaN(), -just_below};
    const Intensity limit = light_needed(row, look.toward[at], multiplier);
    return {in_candelas(*light), in_candelas(own ? limit - *light : *light - limit)};
}

Charting charted_area(const RuleRow& row, const LampLook& look, std::size_t at, Length hairline)
{
    const bool in_view = charted_by(row) == Charted::area_in_view;
    return {in_mm2(in_view ? look.visible(at) : look.hidden(at)),
            in_mm2(margin_at(row, look, at, hairline))};
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
    std::vector<double> standing = f.margins;
    for (std::size_t i = 0; i < standing.size(); ++i)
        standing[i] = f.outcomes[i] == Outcome::met ? std::max(standing[i], 0.0)
                                                    : std::min(standing[i], -just_below);
    return standing;
}

} // namespace

DirectionFigures figures_of(const RuleRow& row, const LampVerdict& verdict, const LampLook& look,
                            Length hairline)
{
    DirectionFigures f{.grid = {nodes_of(verdict, look), verdict.field},
                       .at = {},
                       .outcomes = {},
                       .values = {},
                       .margins = {},
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
        const Charting c = asks_light(row.criterion)
                               ? charted_light(row, look, d.at, verdict.light->multiplier)
                               : charted_area(row, look, d.at, hairline);
        f.values.push_back(c.value);
        f.margins.push_back(c.margin);
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
