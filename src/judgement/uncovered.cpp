#include "judgement/uncovered.h"

#include <algorithm>
#include <map>

namespace glim {

namespace {

/// Neighbours along the grid, with nothing but field between them.
bool adjoin(const Bearing& a, const Bearing& b, const Field& field)
{
    return field.holds({(a.h + b.h) / 2, (a.v + b.v) / 2});
}

/// The grid lines that a verdict's directions stand on.
struct Lines {
    std::vector<Angle> hs, vs;

    Lines(const LampVerdict& verdict, const LampLook& look)
    {
        for (const DirectionVerdict& d : verdict.directions) {
            hs.push_back(look.toward[d.at].h);
            vs.push_back(look.toward[d.at].v);
        }
        for (std::vector<Angle>* lines : {&hs, &vs}) {
            std::sort(lines->begin(), lines->end());
            lines->erase(std::unique(lines->begin(), lines->end()), lines->end());
        }
    }

    std::pair<int, int> place_of(const Bearing& b) const
    {
        return {static_cast<int>(std::lower_bound(vs.begin(), vs.end(), b.v) - vs.begin()),
                static_cast<int>(std::lower_bound(hs.begin(), hs.end(), b.h) - hs.begin())};
    }
};

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

/// By places of its lines: V, then H.
using OpenDirection = std::pair<std::pair<int, int>, const DirectionVerdict*>;
using OpenDirections = std::map<std::pair<int, int>, const DirectionVerdict*>;

/// Moves the up to eight neighbours of `here` out of `open`.
std::vector<OpenDirection> take_neighbours(const OpenDirection& here, OpenDirections& open,
                                           const Field& field, const LampLook& look)
{
    std::vector<OpenDirection> taken;
    for (int v = -1; v <= 1; ++v)
        for (int h = -1; h <= 1; ++h) {
            const auto found = open.find({here.first.first + v, here.first.second + h});
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
    const Lines lines(verdict, look);
    OpenDirections open;
    for (const DirectionVerdict& d : verdict.directions)
        if (d.outcome != Outcome::met)
            open[lines.place_of(look.toward[d.at])] = &d;

    std::vector<UncoveredRange> ranges;
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
