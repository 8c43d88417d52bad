#include "remedy/keep_clear_set.h"

#include <algorithm>

namespace glim {

namespace {

using Outlines = std::vector<std::vector<Point2>>;

/// What pieces that lie in order cover together: united lot by lot, since joining common edges
/// costs the square of their number.
Outlines united_by_lots(Outlines pieces)
{
    constexpr std::size_t lot = 64;
    while (pieces.size() > lot) {
        Outlines united;
        for (std::size_t first = 0; first < pieces.size(); first += lot) {
            const std::size_t count = std::min(lot, pieces.size() - first);
            for (std::vector<Point2>& outline :
                 united_outlines(std::span(pieces).subspan(first, count), Length()))
                united.push_back(std::move(outline));
        }
        if (united.size() >= pieces.size())
            break; // they lie apart
        pieces = std::move(united);
    }
    return united_outlines(pieces, Length());
}

} // namespace

KeepClearSet::KeepClearSet(std::vector<SightSheaf> sheaves, const HeightSpan& levels)
    : sheaves_(std::move(sheaves)), lowest_(in_mm(levels.bottom)), highest_(in_mm(levels.top))
{
    std::erase_if(sheaves_, [](const SightSheaf& sheaf) { return sheaf.empty(); });
    // The steepest first: what they reach spares most questions to the rest.
    std::stable_sort(sheaves_.begin(), sheaves_.end(), [](const auto& a, const auto& b) {
        return a.toward().v_most > b.toward().v_most;
    });
}

bool KeepClearSet::holds(const Point& p) const
{
    return p.z() >= lowest_ && p.z() <= highest_ &&
           std::any_of(sheaves_.begin(), sheaves_.end(),
                       [&](const SightSheaf& sheaf) { return sheaf.holds(p); });
}

bool KeepClearSet::may_meet(std::span<const Point> corners) const
{
    const auto all = [&](auto is_beyond) {
        return std::all_of(corners.begin(), corners.end(), is_beyond);
    };
    if (all([&](const Point& p) { return p.z() < lowest_; }) ||
        all([&](const Point& p) { return p.z() > highest_; }))
        return false;
    return std::any_of(sheaves_.begin(), sheaves_.end(),
                       [&](const SightSheaf& sheaf) { return sheaf.may_meet(corners); });
}

bool KeepClearSet::is_near(const Point& p, double within) const
{
    // Beyond the levels nothing belongs to it: only what is surely between them counts.
    const double room = std::min({within, p.z() - lowest_, highest_ - p.z()});
    return room >= 0 && std::any_of(sheaves_.begin(), sheaves_.end(), [&](const SightSheaf& sheaf) {
               return sheaf.is_near(p, room);
           });
}

std::optional<HeightSpan> KeepClearSet::column(const Point2& place) const
{
    SightSheaf::Reach up, down;
    for (const SightSheaf& sheaf : sheaves_)
        sheaf.raise({&place, 1}, SightSheaf::Sense::up, up);
    for (auto sheaf = sheaves_.rbegin(); sheaf != sheaves_.rend(); ++sheaf)
        sheaf->raise({&place, 1}, SightSheaf::Sense::down, down);
    const double top = std::min(up.most[0], highest_);
    const double bottom = std::max(-down.most[0], lowest_);
    if (!up.any || !down.any || bottom > top)
        return std::nullopt;
    return HeightSpan{millimetres(bottom), millimetres(top)};
}

CellSpan KeepClearSet::over(const PlaneTriangle& cell) const
{
    SightSheaf::Reach up, down;
    for (const SightSheaf& sheaf : sheaves_)
        sheaf.raise(cell, SightSheaf::Sense::up, up);
    for (auto sheaf = sheaves_.rbegin(); sheaf != sheaves_.rend(); ++sheaf)
        sheaf->raise(cell, SightSheaf::Sense::down, down);
    CellSpan span;
    span.any = up.any && down.any;
    bool above = true, below = true, all_high = true, all_low = true;
    for (std::size_t j = 0; j < cell.size(); ++j) {
        span.top[j] = up.most[j];
        span.bottom[j] = -down.most[j];
        above = above && span.bottom[j] > highest_;
        below = below && span.top[j] < lowest_;
        all_high = all_high && span.top[j] >= highest_;
        all_low = all_low && span.bottom[j] <= lowest_;
    }
    span.any = span.any && !above && !below;
    // Where a level cuts through the cell, cutting its corners alone would cut the set's too.
    if (all_high)
        span.top.fill(highest_);
    if (all_low)
        span.bottom.fill(lowest_);
    return span;
}

Length KeepClearSet::widest_gap(const Point2& place) const
{
    std::vector<HeightSpan> spans;
    for (const SightSheaf& sheaf : sheaves_)
        sheaf.add_spans(place, spans);
    std::sort(spans.begin(), spans.end(),
              [](const HeightSpan& a, const HeightSpan& b) { return a.bottom < b.bottom; });
    Length widest;
    for (std::size_t i = 1; i < spans.size(); ++i) {
        widest = std::max(widest, spans[i].bottom - spans[i - 1].top);
        spans[i].top = std::max(spans[i].top, spans[i - 1].top);
    }
    return widest;
}

std::vector<std::vector<Point2>> KeepClearSet::plan(const ConvexPolygon& within, Length grown) const
{
    Outlines outlines;
    for (const SightSheaf& sheaf : sheaves_)
        for (std::vector<Point2>& outline : united_by_lots(sheaf.plan(within)))
            outlines.push_back(std::move(outline));
    return united_outlines(outlines, grown);
}

} // namespace glim
