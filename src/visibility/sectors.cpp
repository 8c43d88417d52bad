#include "visibility/sectors.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace glim {

namespace {

int sector_of(const Point2& way)
{
    const bool left = way.x() < 0, below = way.y() < 0;
    const bool steep = std::abs(way.y()) > std::abs(way.x());
    const int quadrant = below ? (left ? 2 : 3) : (left ? 1 : 0);
    const bool second = quadrant % 2 == 0 ? steep : !steep;
    return 2 * quadrant + (second ? 1 : 0);
}

/// Between two ways less than half a turn apart, both included; all where that cannot be told.
Sectors sectors_between(const Point2& from, const Point2& to)
{
    const int first = sector_of(from);
    const int steps = (sector_of(to) - first + sector_count) % sector_count;
    if (steps >= sector_count / 2)
        return all_sectors;
    unsigned ways = 0;
    for (int s = 0; s <= steps; ++s)
        ways |= 1U << ((first + s) % sector_count);
    return static_cast<Sectors>(ways);
}

double squared_distance_to(const Point2& a, const Point2& b)
{
    const Point2 along = b - a;
    const double squared = along.squaredNorm();
    const double at = squared > 0 ? std::clamp(-a.dot(along) / squared, 0.0, 1.0) : 0;
    return (a + at * along).squaredNorm();
}

} // namespace

PatchSeen seen_from(const Point2& point, const Patch& patch)
{
    Patch ways;
    for (std::size_t i = 0; i < patch.size(); ++i)
        ways[i] = patch[i] - point;
    // Seen from outside, all of it lies within half a turn, between its outermost corners.
    Point2 rightmost = ways[0], leftmost = ways[0];
    double squared = std::numeric_limits<double>::infinity();
    bool turns_left = false, turns_right = false;
    for (std::size_t i = 0; i < ways.size(); ++i) {
        const Point2& next = ways[(i + 1) % ways.size()];
        const double turn = cross(ways[i], next);
        turns_left = turns_left || turn > 0;
        turns_right = turns_right || turn < 0;
        squared = std::min(squared, squared_distance_to(ways[i], next));
        if (cross(rightmost, ways[i]) < 0)
            rightmost = ways[i];
        if (cross(leftmost, ways[i]) > 0)
            leftmost = ways[i];
    }
    if (turns_left != turns_right || squared == 0)
        return {0, all_sectors};
    return {std::sqrt(squared), sectors_between(rightmost, leftmost)};
}

Sectors ways_into_circle(const Point2& centre, double radius)
{
    const double far = centre.norm();
    if (far <= radius)
        return all_sectors;
    // Where its tangents touch it.
    const double sine = radius / far, cosine = std::sqrt(1 - sine * sine);
    const auto turned = [&](double by) {
        return Point2(cosine * centre.x() - by * centre.y(), by * centre.x() + cosine * centre.y());
    };
    return sectors_between(turned(-sine), turned(sine));
}

} // namespace glim
