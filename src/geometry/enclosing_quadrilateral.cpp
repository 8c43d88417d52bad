#include "geometry/enclosing_quadrilateral.h"

#include "geometry/convex_hull.h"
#include "geometry/simpler_hull.h"

#include <algorithm>
#include <cassert>
#include <limits>
#include <optional>

namespace glim {

namespace {

using Corners = std::array<Point2, 4>;

constexpr double infinite = std::numeric_limits<double>::infinity();

/// The sine between two sides below which they count as parallel, and are not prolonged to where
/// they meet: that place would be uncertain by more than a tenth of a per mille of the polygon.
constexpr double least_sine = 1e-12;

/// The same for a fourth side that lies along no edge: there the area hangs on the place, and
/// rounding and what is lost by leaving such sides to the edges are both about 1e-8 of the area.
constexpr double least_taper = 1e-8;

double signed_area(const Corners& c) { return cross(c[2] - c[0], c[3] - c[1]) / 2; }

/// A quadrilateral, by the places of its sides in the polygon, the fourth perhaps along none.
struct Choice {
    double area = infinite;
    std::size_t first = 0, third = 0;        ///< edges; the second lies between them
    std::optional<std::size_t> free_at = {}; ///< the corner that the middle of the fourth touches
};

/// Looks through all quadrilaterals with three sides along edges of a convex polygon.
///
/// The area between an edge i, a later edge j, both prolonged until they meet, and the polygon is
/// the pocket of i and j. A quadrilateral of four edges has the area of the polygon and of four
/// pockets; the best second edge for each pair (first, third) is found once for all.
class Search {
public:
    explicit Search(const ConvexPolygon& polygon)
        : p_(polygon), n_(polygon.size()), area_(in_mm2(area_of(polygon)))
    {
        for (std::size_t i = 0; i < n_; ++i)
            along_.push_back((p_[after(i)] - p_[i]).normalized());
        find_pockets();
        find_pairs();
    }

    /// Nothing if rounding leaves no four sides that meet.
    std::optional<Corners> least() const
    {
        Choice best;
        for (std::size_t i = 0; i < n_; ++i)
            for (std::size_t k = 0; k < n_; ++k) {
                const double area = area_ + pair(i, k) + pair(k, i);
                if (i < k && area < best.area)
                    best = {area, i, k, {}};
                if (const Choice tapered = with_free_side(i, k); tapered.area < best.area)
                    best = tapered;
            }
        if (best.area == infinite)
            return std::nullopt;
        return corners_of(best);
    }

private:
    std::size_t after(std::size_t i) const { return i + 1 == n_ ? 0 : i + 1; }
    std::size_t before(std::size_t i) const { return i == 0 ? n_ - 1 : i - 1; }
    double pocket(std::size_t i, std::size_t j) const { return pockets_[i * n_ + j]; }
    /// The pockets of (i, j) and (j, k), j the best between.
    double pair(std::size_t i, std::size_t k) const { return pairs_[i * n_ + k]; }

    /// How far `p` lies within edge `i`.
    double depth(std::size_t i, const Point2& p) const { return cross(along_[i], p - p_[i]); }

    /// Where edge `i` going on and edge `j` going back meet.
    Point2 meeting(std::size_t i, std::size_t j) const
    {
        if (j == after(i))
            return p_[j];
        const Point2& end = p_[after(i)];
        return end + cross(p_[j] - end, along_[j]) / cross(along_[i], along_[j]) * along_[i];
    }

    void find_pockets()
    {
        pockets_.assign(n_ * n_, infinite);
        for (std::size_t i = 0; i < n_; ++i) {
            const Point2& end = p_[after(i)];
            pockets_[i * n_ + after(i)] = 0;
            double chain = 0; // area between the polygon from `end` to edge j and its chord
            for (std::size_t j = after(after(i)); j != i; j = after(j)) {
                chain += cross(p_[before(j)] - end, p_[j] - end) / 2;
                if (cross(along_[i], along_[j]) < least_sine)
                    continue;
                const double cut = cross(meeting(i, j) - end, p_[j] - end) / 2;
                pockets_[i * n_ + j] = std::max(0.0, cut - chain);
            }
        }
    }

    void find_pairs()
    {
        pairs_.assign(n_ * n_, infinite);
        for (std::size_t i = 0; i < n_; ++i)
            for (std::size_t j = 0; j < n_; ++j) {
                const double first = pocket(i, j);
                if (first == infinite)
                    continue;
                double* const to = &pairs_[i * n_];
                const double* const from = &pockets_[j * n_];
                for (std::size_t k = 0; k < n_; ++k)
                    to[k] = std::min(to[k], first + from[k]);
            }
    }

    /// Three sides along edges i, one between, and k, where i and k draw together behind the one
    /// between. The triangle that i, k and a fourth side make is least where the middle of that
    /// side is the polygon's point with the largest product of distances from i and k. If the point
    /// lies within an edge, four edges do as well.
    Choice with_free_side(std::size_t i, std::size_t k) const
    {
        const double sine = cross(along_[i], along_[k]);
        if (sine < least_taper || pair(i, k) == infinite || pocket(i, k) == infinite)
            return {};
        const std::size_t v = middle_of_free_side(i, k);
        const Point2 backwards = half_free_side(i, k, v);
        if (cross(p_[after(v)] - p_[v], backwards) < 0 ||
            cross(p_[before(v)] - p_[v], backwards) < 0)
            return {};
        const double triangle = 2 * depth(i, p_[v]) * depth(k, p_[v]) / sine;
        if (triangle < area_)
            return {}; // rounding, in slivers: the triangle holds the polygon
        return {triangle - pocket(i, k) + pair(i, k), i, k, v};
    }

    std::size_t middle_of_free_side(std::size_t i, std::size_t k) const
    {
        std::size_t best = i;
        double largest = -infinite;
        for (std::size_t v = after(k);; v = after(v)) {
            const double product = depth(i, p_[v]) * depth(k, p_[v]);
            if (product > largest) {
                largest = product;
                best = v;
            }
            if (v == i)
                return best;
        }
    }

    /// From corner `v` to where the side whose middle it is meets edge `k`.
    Point2 half_free_side(std::size_t i, std::size_t k, std::size_t v) const
    {
        const double sine = cross(along_[i], along_[k]);
        return (depth(i, p_[v]) * along_[k] + depth(k, p_[v]) * along_[i]) / sine;
    }

    std::size_t best_between(std::size_t i, std::size_t k) const
    {
        for (std::size_t j = 0; j < n_; ++j)
            if (pocket(i, j) + pocket(j, k) == pair(i, k))
                return j;
        assert(false);
        return i;
    }

    Corners corners_of(const Choice& c) const
    {
        const std::size_t second = best_between(c.first, c.third);
        const Point2 start = meeting(c.first, second);
        const Point2 next = meeting(second, c.third);
        if (c.free_at) {
            const Point2 half = half_free_side(c.first, c.third, *c.free_at);
            return {start, next, p_[*c.free_at] + half, p_[*c.free_at] - half};
        }
        const std::size_t fourth = best_between(c.third, c.first);
        return {start, next, meeting(c.third, fourth), meeting(fourth, c.first)};
    }

    const ConvexPolygon& p_;
    std::size_t n_;
    double area_;
    std::vector<Point2> along_;   ///< unit vectors
    std::vector<double> pockets_; ///< infinite where the edges do not meet
    std::vector<double> pairs_;
};

/// Along the longest edge: for slivers so thin that their edges count as parallel.
Corners rectangle_around(const ConvexPolygon& polygon)
{
    Point2 along = Point2::Zero();
    for (std::size_t i = 0; i < polygon.size(); ++i)
        if (const Point2 edge = polygon[(i + 1) % polygon.size()] - polygon[i];
            edge.squaredNorm() > along.squaredNorm())
            along = edge;
    along.normalize();
    const Point2 across(-along.y(), along.x());
    Point2 least = Point2::Constant(infinite);
    Point2 most = -least;
    for (const Point2& p : polygon) {
        const Point2 place(along.dot(p), across.dot(p));
        least = least.cwiseMin(place);
        most = most.cwiseMax(place);
    }
    const auto at = [&](double x, double y) -> Point2 { return x * along + y * across; };
    return {at(least.x(), least.y()), at(most.x(), least.y()), at(most.x(), most.y()),
            at(least.x(), most.y())};
}

/// Requires: as `convex_hull` makes it; not empty.
Corners least_corners(const ConvexPolygon& hull)
{
    const std::size_t last = hull.size() - 1;
    if (hull.size() <= 3)
        return {hull[0], hull[std::min<std::size_t>(1, last)], hull[last], hull[0]};
    return Search(hull).least().value_or(rectangle_around(hull));
}

Area area_of(const Corners& corners)
{
    return square_millimetres(std::max(0.0, signed_area(corners)));
}

} // namespace

EnclosingQuadrilateral smallest_quadrilateral(std::span<const Point2> points)
{
    const ConvexPolygon hull = convex_hull(points);
    if (hull.empty())
        return {};
    if (hull.size() <= most_exact_corners) {
        const Corners corners = least_corners(hull);
        return {corners, area_of(corners), area_of(corners)};
    }
    const SimplerHull simpler = simpler_hull(hull, most_exact_corners / 2);
    const Corners corners = least_corners(simpler.outside);
    return {corners, area_of(corners), area_of(least_corners(simpler.inside))};
}

} // namespace glim
