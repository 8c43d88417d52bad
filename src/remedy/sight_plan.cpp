#include "geometry/convex_hull.h"
#include "remedy/sight_ask.h"
#include "units/trig.h"

#include <cmath>

namespace glim {

// Which places of the plan a sheaf covers: SightSheaf::plan.

namespace {

/// Between two edges of a swept piece of plan; its far side bulges by 1 / cos of half of it.
constexpr Angle fan_step = degrees(30);

Point2 level_way(Angle h) { return {cos(h), sin(h)}; }

} // namespace

/// The H in which the facet is seen at any V of the rectangle; nothing if at none.
std::optional<std::array<Angle, 2>> SightSheaf::azimuths(const LitFacet& facet) const
{
    const double level = facet.normal.head<2>().norm();
    if (!facet.cut || level < facing_grain)
        return std::array{toward_.h_least, toward_.h_most};
    const double rise = std::max(facet.normal.z() * down_slope_, facet.normal.z() * up_slope_);
    const Angle half = degrees(90) + arc_sine(rise / level);
    const Angle middle = (toward_.h_least + toward_.h_most) / 2;
    Angle azimuth = angle_of(facet.normal.y(), facet.normal.x());
    while (azimuth - middle > degrees(180))
        azimuth = azimuth - degrees(360);
    while (azimuth - middle < degrees(-180))
        azimuth = azimuth + degrees(360);
    const Angle off = std::max(azimuth - middle, middle - azimuth);
    if (half + (toward_.h_most - toward_.h_least) / 2 >= degrees(360) - off)
        return std::array{toward_.h_least, toward_.h_most}; // seen at both ends
    const Angle least = std::max(toward_.h_least, azimuth - half);
    const Angle most = std::min(toward_.h_most, azimuth + half);
    if (least > most)
        return std::nullopt;
    return std::array{least, most};
}

std::vector<ConvexPolygon> SightSheaf::plan(const ConvexPolygon& within) const
{
    double far = 0;
    for (const LitFacet& facet : facets_)
        for (const Point& x : facet.corners)
            for (const Point2& p : within)
                far = std::max(far, (p - x.head<2>()).norm());
    far /= cos(fan_step / 2);
    std::vector<ConvexPolygon> pieces;
    for (const LitFacet& facet : facets_) {
        const auto seen_at = azimuths(facet);
        if (!seen_at)
            continue;
        const auto& [least, most] = *seen_at;
        const int steps = std::max(1, static_cast<int>(std::ceil((most - least) / fan_step)));
        std::vector<Point2> points;
        for (const Point& x : facet.corners) {
            points.emplace_back(x.head<2>());
            for (int i = 0; i <= steps; ++i)
                points.emplace_back(x.head<2>() +
                                    far * level_way(least + (most - least) * i / steps));
        }
        ConvexPolygon piece = common_part(convex_hull(points), within);
        if (piece.size() > 2)
            pieces.push_back(std::move(piece));
    }
    return pieces;
}

} // namespace glim
