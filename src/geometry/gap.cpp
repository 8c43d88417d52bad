#include "geometry/gap.h"

#include "geometry/turn.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// Between two places of two triangles.
struct Way {
    Point2 from, to;
    double squared() const { return (to - from).squaredNorm(); }
};

Point2 nearest_on_segment(const Point2& a, const Point2& b, const Point2& p)
{
    const Point2 along = b - a;
    const double squared_length = along.squaredNorm();
    if (squared_length == 0)
        return a;
    return a + std::clamp(along.dot(p - a) / squared_length, 0.0, 1.0) * along;
}

/// Edges and corners included; never for a triangle without area.
bool holds(const PlaneTriangle& t, const Point2& p)
{
    const int turns[] = {turn_of(t[0], t[1], p), turn_of(t[1], t[2], p), turn_of(t[2], t[0], p)};
    const auto [least, most] = std::minmax_element(std::begin(turns), std::end(turns));
    return *least * *most >= 0 && turn_of(t[0], t[1], t[2]) != 0;
}

/// Where the segments ab and cd cross, each within the other.
std::optional<Point2> crossing(const Point2& a, const Point2& b, const Point2& c, const Point2& d)
{
    if (turn_of(a, b, c) * turn_of(a, b, d) >= 0 || turn_of(c, d, a) * turn_of(c, d, b) >= 0)
        return std::nullopt;
    const double share = cross(c - a, d - c) / cross(b - a, d - c);
    return a + std::clamp(share, 0.0, 1.0) * (b - a);
}

/// A place that both triangles have, unless they only touch.
std::optional<Point2> common_place(const PlaneTriangle& a, const PlaneTriangle& b)
{
    for (const Point2& p : a)
        if (holds(b, p))
            return p;
    for (const Point2& p : b)
        if (holds(a, p))
            return p;
    for (int i = 0; i < 3; ++i)
        for (int j = 0; j < 3; ++j)
            if (auto p = crossing(a[i], a[(i + 1) % 3], b[j], b[(j + 1) % 3]))
                return p;
    return std::nullopt;
}

/// Apart, triangles are nearest at a corner of one of them.
Way shortest_way(const PlaneTriangle& a, const PlaneTriangle& b)
{
    if (const auto common = common_place(a, b))
        return {*common, *common};
    Way best{a[0], b[0]};
    const auto consider = [&](const Way& way) {
        if (way.squared() < best.squared())
            best = way;
    };
    for (int i = 0; i < 3; ++i)
        for (int j = 0; j < 3; ++j) {
            consider({a[i], nearest_on_segment(b[j], b[(j + 1) % 3], a[i])});
            consider({nearest_on_segment(a[j], a[(j + 1) % 3], b[i]), b[i]});
        }
    return best;
}

/// The shortest of the ways that are offered.
class Shortest {
public:
    explicit Shortest(double squared_reach) : squared_reach_(squared_reach) {}

    const double& squared_reach() const { return squared_reach_; }

    void offer(const Way& way, std::size_t from, std::size_t to)
    {
        const double squared = way.squared();
        if (squared > squared_reach_ || (best_ && squared == squared_reach_ && !before(from, to)))
            return;
        squared_reach_ = squared;
        best_ = Gap{millimetres(std::sqrt(squared)), way.from, way.to, from, to};
    }

    const std::optional<Gap>& best() const { return best_; }
    bool touches() const { return best_ && squared_reach_ == 0; }

private:
    bool before(std::size_t from, std::size_t to) const
    {
        return std::pair(from, to) < std::pair(best_->from_triangle, best_->to_triangle);
    }

    double squared_reach_;
    std::optional<Gap> best_;
};

} // namespace

Gap gap_between(const PlaneTriangle& a, const PlaneTriangle& b)
{
    const Way way = shortest_way(a, b);
    return {millimetres(std::sqrt(way.squared())), way.from, way.to};
}

std::optional<Gap> gap_between(const TriangleSet& a, const TriangleSet& b, Length reach)
{
    Shortest shortest(in_mm(reach) * in_mm(reach));
    if (b.triangles().empty())
        return std::nullopt;
    for (std::size_t i = 0; i < a.triangles().size() && !shortest.touches(); ++i) {
        const PlaneTriangle& from = a.triangles()[i];
        b.tree().visit(box_of(from), shortest.squared_reach(), [&](std::size_t j) {
            shortest.offer(shortest_way(from, b.triangles()[j]), i, j);
        });
    }
    return shortest.best();
}

std::optional<Gap> gap_between(std::span<const PlaneTriangle> a, std::span<const PlaneTriangle> b)
{
    return gap_between(TriangleSet({a.begin(), a.end()}), TriangleSet({b.begin(), b.end()}));
}

std::optional<Gap> gap_between(const Point2& p, std::span<const PlaneTriangle> b)
{
    const PlaneTriangle alone = {p, p, p};
    return gap_between(std::span(&alone, 1), b);
}

} // namespace glim
