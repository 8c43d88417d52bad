#include "judgement/uncovered.h"

#include "judgement/grid_lines.h"

#include <algorithm>
#include <map>

namespace glim {

namespace {

void extend(UncoveredRange& range, const DirectionVerdict& d, const LampLook& look)
{
    const Bearing& b = look.toward[d.at];
    const Area visible = look.visible(d.at);
    if (range.directions == 0)
        range = {b.h, b.h, b.v, b.v, 0, {}, visible};
    range.h_least = std::min(range.h_least, b.h);
    range.h_most = std::max(range.h_most, b.h);
    range.v_least = std::min(range.v_least, b.v);
    range.v_most = std::max(range.v_most, b.v);
    range.least_visible = std::min(range.least_visible, visible);
    range.solid_angle += d.weight;
    ++range.directions;
}

using OpenDirection = std::pair<GridLines::Node, const DirectionVerdict*>;
using OpenDirections = std::map<GridLines::Node, const DirectionVerdict*>;

/// Moves the up to eight neighbours of `here` out of `open`.
std::vector<OpenDirection> take_neighbours(const OpenDirection& here, OpenDirections& open,
                                           const Field& field, const LampLook& look)
{
    std::vector<OpenDirection> taken;
    for (int v = -1; v <= 1; ++v)
        for (int h = -1; h <= 1; ++h) {
            const auto found = open.find({here.first.v + v, here.first.h + h});
            if (found == open.end() ||
                !adjoin(look.toward[here.second->at], look.toward[found->second->at], field))
                continue;
            taken.emplace_back(*found);
            open.erase(found);
        }
    return taken;
}

} // namespace

std::vector<UncoveredRange> uncovered_ranges(const LampVerdict& verdict, const LampLook& look)
{
    const GridLines lines(verdict, look);
    OpenDirections open;
    std::vector<UncoveredRange> ranges;
    for (const DirectionVerdict& d : verdict.directions)
        if (d.outcome != Outcome::met && d.between)
            extend(ranges.emplace_back(), d, look);
    for (const DirectionVerdict& d : verdict.directions)
        if (d.outcome != Outcome::met && !d.between)
            open[lines.node_of(look.toward[d.at])] = &d;

    while (!open.empty()) {
        UncoveredRange range;
        std::vector<OpenDirection> pending = {*open.begin()};
        open.erase(open.begin());
        while (!pending.empty()) {
            const OpenDirection here = pending.back();
            pending.pop_back();
            extend(range, *here.second, look);
            for (const OpenDirection& next : take_neighbours(here, open, verdict.field, look))
                pending.push_back(next);
        }
        ranges.push_back(range);
    }
    std::stable_sort(ranges.begin(), ranges.end(),
                     [](const UncoveredRange& a, const UncoveredRange& b) {
                         return a.directions > b.directions;
                     });
    return ranges;
}

} // namespace glim
