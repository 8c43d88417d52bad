#include "remedy/reach_from.h"

#include <algorithm>
#include <limits>

namespace glim {

namespace {

/// Good enough beside any chord error.
constexpr double height_grain_mm = 1e-3;
constexpr int most_steps = 24;
constexpr int most_thirds = 40;

double height_at(const Point& x, const HeightRule& rule, const Point2& place)
{
    return rule.sign * x.z() + rule.slope * (place - x.head<2>()).norm();
}

/// The height is concave along the segment.
Point best_between(Point a, Point b, const HeightRule& rule, const Point2& place)
{
    for (int i = 0; i < most_thirds; ++i) {
        const Point low = a + (b - a) / 3;
        const Point high = b - (b - a) / 3;
        if (height_at(low, rule, place) < height_at(high, rule, place))
            a = low;
        else
            b = high;
    }
    return (a + b) / 2;
}

Point middle_of(const FacetPiece& piece)
{
    Point sum = Point::Zero();
    for (std::size_t i = 0; i < piece.count; ++i)
        sum += piece.corners[i];
    return sum / static_cast<double>(piece.count);
}

/// A concave height lies nowhere above its tangent plane at any point, and that is highest at a
/// corner: so every step bounds it, and walks towards that corner.
double bounded_reach(const FacetPiece& piece, const HeightRule& rule, const Point2& place)
{
    Point at = middle_of(piece);
    double bound = std::numeric_limits<double>::infinity();
    for (int step = 0; step < most_steps; ++step) {
        const Point2 away = at.head<2>() - place;
        const double r = away.norm();
        const Point2 tilt = r > 0 ? Point2(rule.slope / r * away) : Point2::Zero();
        double highest = -std::numeric_limits<double>::infinity();
        Point toward = at;
        for (std::size_t i = 0; i < piece.count; ++i) {
            const Point& x = piece.corners[i];
            const double tangent =
                rule.sign * x.z() + rule.slope * r + tilt.dot(Point2((x - at).head<2>()));
            if (tangent > highest) {
                highest = tangent;
                toward = x;
            }
        }
        bound = std::min(bound, highest);
        if (bound - height_at(at, rule, place) < height_grain_mm)
            break;
        at = best_between(at, toward, rule, place);
    }
    return bound;
}

} // namespace

FacetPiece FacetPiece::within(const Point2& across, double bound) const
{
    FacetPiece kept;
    for (std::size_t i = 0; i < count; ++i) {
        const Point& a = corners[i];
        const Point& b = corners[i + 1 < count ? i + 1 : 0];
        const double side_a = bound - across.dot(a.head<2>());
        const double side_b = bound - across.dot(b.head<2>());
        if (side_a >= 0)
            kept.add(a);
        if ((side_a < 0) != (side_b < 0) && side_a != side_b)
            kept.add(a + side_a / (side_a - side_b) * (b - a));
    }
    return kept;
}

double reach_from(const FacetPiece& piece, const HeightRule& rule, const Point2& place)
{
    if (rule.slope < 0)
        return bounded_reach(piece, rule, place);
    double most = -std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < piece.count; ++i)
        most = std::max(most, height_at(piece.corners[i], rule, place));
    return most;
}

} // namespace glim
