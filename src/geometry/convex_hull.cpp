#include "geometry/convex_hull.h"

#include "geometry/turn.h"

#include <algorithm>

namespace glim {

namespace {

/// Adds the hull's half that turns left along `sorted`, but for its last point.
void add_chain(ConvexPolygon& hull, std::span<const Point2> sorted)
{
    const std::size_t first = hull.size();
    for (const Point2& p : sorted) {
        while (hull.size() >= first + 2 && turn_of(hull[hull.size() - 2], hull.back(), p) <= 0)
            hull.pop_back();
        hull.push_back(p);
    }
    hull.pop_back();
}

} // namespace

ConvexPolygon convex_hull(std::span<const Point2> points)
{
    std::vector<Point2> sorted(points.begin(), points.end());
    std::sort(sorted.begin(), sorted.end(), [](const Point2& a, const Point2& b) {
        return a.x() != b.x() ? a.x() < b.x() : a.y() < b.y();
    });
    sorted.erase(std::unique(sorted.begin(), sorted.end()), sorted.end());
    if (sorted.size() < 3)
        return sorted;

    ConvexPolygon hull;
    add_chain(hull, sorted);
    std::reverse(sorted.begin(), sorted.end());
    add_chain(hull, sorted);
    return hull;
}

} // namespace glim
