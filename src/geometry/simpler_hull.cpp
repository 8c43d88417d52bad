#include "geometry/simpler_hull.h"

#include "geometry/convex_hull.h"

#include <cassert>
#include <cmath>
#include <limits>
#include <set>

namespace glim {

namespace {

/// The sides that are left, in a ring, with the area that leaving out each of them would add.
class Ring {
public:
    explicit Ring(const ConvexPolygon& hull)
    {
        const std::size_t n = hull.size();
        for (std::size_t i = 0; i < n; ++i)
            sides_.push_back(
                {hull[i], hull[(i + 1) % n] - hull[i], (i + n - 1) % n, (i + 1) % n, 0});
        for (std::size_t i = 0; i < n; ++i)
            put_in_order(i);
    }

    std::size_t size() const { return order_.size(); }

    /// False if no side can be spared.
    bool leave_one_out()
    {
        const auto [cost, out] = *order_.begin();
        if (!std::isfinite(cost))
            return false;
        const Side& side = sides_[out];
        for (const std::size_t changed : {out, side.before, side.after})
            order_.erase({sides_[changed].cost, changed});
        sides_[side.after].start = meeting_beside(out);
        sides_[side.before].after = side.after;
        sides_[side.after].before = side.before;
        put_in_order(side.before);
        put_in_order(side.after);
        return true;
    }

    /// In the order of the polygon's own sides.
    std::vector<std::size_t> left() const
    {
        std::set<std::size_t> all;
        for (const auto& [cost, i] : order_)
            all.insert(i);
        return {all.begin(), all.end()};
    }

    const Point2& start(std::size_t i) const { return sides_[i].start; }

private:
    struct Side {
        Point2 start; ///< where the side before meets this one
        Point2 along;
        std::size_t before, after;
        double cost;
    };

    /// Where the neighbours of side `i` meet. Requires: they turn left by less than half a turn.
    Point2 meeting_beside(std::size_t i) const
    {
        const Side& before = sides_[sides_[i].before];
        const Side& after = sides_[sides_[i].after];
        const Point2& end = after.start;
        const Point2 gap = end - sides_[i].start;
        return sides_[i].start +
               cross(gap, after.along) / cross(before.along, after.along) * before.along;
    }

    void put_in_order(std::size_t i)
    {
        Side& side = sides_[i];
        const Side& after = sides_[side.after];
        side.cost = std::numeric_limits<double>::infinity();
        if (cross(sides_[side.before].along, after.along) > 0) {
            const double added = cross(meeting_beside(i) - side.start, after.start - side.start);
            if (std::isfinite(added))
                side.cost = added;
        }
        order_.insert({side.cost, i});
    }

    std::vector<Side> sides_;
    std::set<std::pair<double, std::size_t>> order_;
};

} // namespace

SimplerHull simpler_hull(const ConvexPolygon& hull, std::size_t sides)
{
    assert(hull.size() >= 3 && sides >= 4);
    Ring ring(hull);
    while (ring.size() > sides && ring.leave_one_out()) {
    }
    ConvexPolygon inside, outside;
    for (const std::size_t i : ring.left()) {
        outside.push_back(ring.start(i));
        inside.insert(inside.end(), {hull[i], hull[(i + 1) % hull.size()]});
    }
    // Prolonged sides meet where rounding puts them; what comes out of the hull is convex.
    return {convex_hull(inside), convex_hull(outside)};
}

} // namespace glim
