#include "judgement/between_directions.h"
#include "judgement/direction_outcome.h"
#include "judgement/grid_lines.h"
#include "machine/stop.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

Bearing middle(const Bearing& a, const Bearing& b) { return {(a.h + b.h) / 2, (a.v + b.v) / 2}; }

Angle apart(const Bearing& a, const Bearing& b)
{
    return std::max(degrees(std::abs(in_degrees(a.h - b.h))),
                    degrees(std::abs(in_degrees(a.v - b.v))));
}

/// The figure that crosses a threshold: what is in view, or what is hidden.
Area figure_of(const RuleRow& row, const SeenArea& seen)
{
    return std::holds_alternative<LeastArea>(row.criterion) ? seen.visible : seen.hidden();
}

/// Whether samples call it met; bounds are too wide to be brought to a tenth of a degree.
bool looks_met(const RuleRow& row, const SeenArea& seen, Length hairline)
{
    if (const auto* least = std::get_if<LeastArea>(&row.criterion))
        return seen.visible >= least->area;
    if (const auto* most = std::get_if<MostHidden>(&row.criterion))
        return seen.hidden() <= seen.approved * most->share;
    return seen.approved > Area() && seen.hidden() <= seen.outline * hairline;
}

struct Pair {
    std::size_t met, unmet; ///< places in the look
};

std::vector<Pair> changing_pairs(const LampVerdict& verdict, const LampLook& look)
{
    const GridLines lines(verdict, look);
    const auto is_met = [&](std::size_t d) {
        return verdict.directions[d].outcome == Outcome::met;
    };
    std::vector<Pair> pairs;
    for (const auto& [node, here] : lines.nodes())
        for (const GridLines::Node next :
             {GridLines::Node{node.v, node.h + 1}, {node.v + 1, node.h}}) {
            const auto there = lines.at(next);
            if (!there || is_met(here) == is_met(*there))
                continue;
            const std::size_t a = verdict.directions[here].at, b = verdict.directions[*there].at;
            if (adjoin(look.toward[a], look.toward[b], verdict.field))
                pairs.push_back(is_met(here) ? Pair{a, b} : Pair{b, a});
        }
    return pairs;
}

/// What the figures' own errors may shift a crossing by, where they change as steeply as between
/// the two neighbours.
Angle shift_by(Area error, Area change, Angle step)
{
    const double steepness = std::abs(in_mm2(change));
    return steepness > 0 ? std::min(step, step * (in_mm2(error) / steepness)) : step;
}

} // namespace

std::vector<Crossing> BetweenDirections::crossings_of(const RuleRow& row,
                                                      const LampVerdict& verdict,
                                                      const LampLook& look) const
{
    const std::vector<Pair> pairs = changing_pairs(verdict, look);
    std::vector<Crossing> crossings(pairs.size());
    const bool whole = for_each_index(pairs.size(), workers_, [&](std::size_t i, unsigned) {
        const auto [met, unmet] = pairs[i];
        Crossing c{
            look.toward[met], look.toward[unmet], look.visible(met), look.visible(unmet), {}};
        const Angle step = apart(c.met, c.unmet);
        Area error = look.seen[unmet].expected_error + look.mesh_error[unmet];
        while (apart(c.met, c.unmet) > sampling_.finest) {
            const Bearing half = middle(c.met, c.unmet);
            const SeenArea seen = eyes_.seen(verdict.look, half, look.frame);
            const bool met_there = looks_met(row, seen, sampling_.hairline);
            (met_there ? c.met : c.unmet) = half;
            (met_there ? c.visible_met : c.visible_unmet) = seen.visible;
            error = seen.expected_error + eyes_.mesh_error(verdict.look, seen);
        }
        const Area change = figure_of(row, look.seen[met]) - figure_of(row, look.seen[unmet]);
        c.uncertainty = apart(c.met, c.unmet) / 2 + shift_by(error, change, step);
        crossings[i] = c;
    });
    if (!whole)
        throw Stopped();
    return crossings;
}

} // namespace glim
