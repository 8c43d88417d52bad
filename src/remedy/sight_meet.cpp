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

bool SightSheaf::misses(const Hull& hull, const Node& node) const
{
    if (hull.ask.misses(node.least, node.most, *this))
        return true;
    const auto farthest = [&](const Point2& p) {
        return (p - node.least.head<2>())
            .cwiseAbs()
            .cwiseMax((p - node.most.head<2>()).cwiseAbs())
            .norm();
    };
    const double up = std::max(0.0, up_slope_), down = std::max(0.0, -down_slope_);
    return hull.is_beyond(1, [&](const Point2& p) {
        return node.most.z() + up * farthest(p);
    }) || hull.is_beyond(-1, [&](const Point2& p) { return -node.least.z() + down * farthest(p); });
}

bool SightSheaf::may_meet(const Hull& hull, std::uint32_t place) const
{
    const Node& node = nodes_[place];
    if (misses(hull, node))
        return false;
    if (node.second_child != 0)
        return may_meet(hull, place + 1) || may_meet(hull, node.second_child);
    return std::any_of(facets_.begin() + node.first, facets_.begin() + node.last,
                       [&](const LitFacet& facet) { return may_meet(hull, facet); });
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

bool SightSheaf::is_near(const Point& p, double within) const
{
    if (nodes_.empty())
        return false;
    std::array<Point, most_corners> around;
    for (int i = 0; i < 8; ++i)
        around[i] = p + within * Vector((i & 1) != 0 ? 1 : -1, (i & 2) != 0 ? 1 : -1,
                                        (i & 4) != 0 ? 1 : -1);
    return is_near(Hull(around, *this), 0, p, within);
}

bool SightSheaf::is_near(const Hull& around, std::uint32_t place, const Point& p,
                         double within) const
{
    const Node& node = nodes_[place];
    if (misses(around, node))
        return false;
    if (node.second_child != 0)
        return is_near(around, place + 1, p, within) ||
               is_near(around, node.second_child, p, within);
    return std::any_of(facets_.begin() + node.first, facets_.begin() + node.last,
                       [&](const LitFacet& facet) { return is_near(facet, p, within); });
}

/// What a corner sends along one H is an upright sector.
bool SightSheaf::is_near(const LitFacet& facet, const Point& p, double within) const
{
    for (const Point& x : facet.corners)
        for (const Point2& way : ways_) {
            const double along = std::max(0.0, way.dot(Point2((p - x).head<2>())));
            const double slope = along > 0
                                     ? std::clamp((p.z() - x.z()) / along, down_slope_, up_slope_)
                                     : std::clamp(0.0, down_slope_, up_slope_);
            const Vector toward(way.x(), way.y(), slope);
            if ((x + along * toward - p).norm() <= within && facet.normal.dot(toward) > 0)
                return true;
        }
    return false;
}

} // namespace glim
