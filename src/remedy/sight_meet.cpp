#include "remedy/sight_ask.h"

#include <cassert>

namespace glim {

// Whether a sheaf may reach into the hull of some places: SightSheaf::may_meet.

namespace {

/// Rounding of heights and distances, mm.
constexpr double meet_grain_mm = 1e-9;

} // namespace

/// The points of a lit face that any place of the hull has within its H are a piece of it that is
/// the same for all of them. What such a fixed piece reaches is convex over the plan (or, by
/// `spare`, lies below what is), and the hull's heights are means of its corners': where all
/// corners stand above it, so does everything between them.
struct SightSheaf::Hull {
    std::span<const Point> corners;
    std::array<Point2, most_corners> plan;
    Ask ask;

    Hull(std::span<const Point> places, const SightSheaf& sheaf)
        : corners(places), plan(laid_down(places)),
          ask({plan.data(), places.size()}, Sense::up, sheaf)
    {
    }
    Hull(const Hull&) = delete; // `ask` looks into `plan`
    Hull& operator=(const Hull&) = delete;

    static std::array<Point2, most_corners> laid_down(std::span<const Point> places)
    {
        std::array<Point2, most_corners> plan;
        for (std::size_t i = 0; i < places.size(); ++i)
            plan[i] = places[i].head<2>();
        return plan;
    }

    /// Whether all corners stand above (`sign` 1) or below (-1) a height that is told for each.
    template <class Height>
    bool is_beyond(double sign, Height height) const
    {
        for (std::size_t i = 0; i < corners.size(); ++i)
            if (sign * corners[i].z() <= height(plan[i]) + meet_grain_mm)
                return false;
        return true;
    }
};

bool SightSheaf::may_meet(std::span<const Point> corners) const
{
    assert(!corners.empty() && corners.size() <= most_corners);
    return !nodes_.empty() && may_meet(Hull(corners, *this), 0);
}

bool SightSheaf::may_meet(const Hull& hull, std::uint32_t place) const
{
    const Node& node = nodes_[place];
    if (hull.ask.misses(node.least, node.most, *this))
        return false;
    const auto farthest = [&](const Point2& p) {
        return (p - node.least.head<2>())
            .cwiseAbs()
            .cwiseMax((p - node.most.head<2>()).cwiseAbs())
            .norm();
    };
    const double up = std::max(0.0, up_slope_), down = std::max(0.0, -down_slope_);
    if (hull.is_beyond(1, [&](const Point2& p) { return node.most.z() + up * farthest(p); }) ||
        hull.is_beyond(-1, [&](const Point2& p) { return -node.least.z() + down * farthest(p); }))
        return false;
    if (node.second_child != 0)
        return may_meet(hull, place + 1) || may_meet(hull, node.second_child);
    for (std::uint32_t f = node.first; f < node.last; ++f)
        if (may_meet(hull, facets_[f]))
            return true;
    return false;
}

bool SightSheaf::may_meet(const Hull& hull, const LitFacet& facet) const
{
    const bool is_behind =
        std::all_of(hull.corners.begin(), hull.corners.end(), [&](const Point& p) {
            return facet.normal.dot(p - facet.corners[0]) < -meet_grain_mm;
        });
    if (is_behind)
        return false;
    const FacetPiece piece = hull.ask.piece_of(facet, *this);
    if (piece.empty())
        return false;
    const auto reach = [&](const HeightRule& rule) {
        const double spare = hull.ask.spare(piece, rule);
        return
            [&piece, &rule, spare](const Point2& p) { return reach_from(piece, rule, p) + spare; };
    };
    return !hull.is_beyond(1, reach(hull.ask.far)) && !hull.is_beyond(-1, reach(hull.ask.near));
}

} // namespace glim
