#include "geometry/triangulate.h"

#include "geometry/mesh_health.h"

#include <Eigen/Geometry>

#include <algorithm>
#include <cassert>
#include <numeric>

namespace glim {

namespace {

using Corner = std::uint32_t;

/// Twice the polygon's area vector, by Newell's sums: right for any shape, warped ones on average.
Vector area_sum(std::span<const Point> corners)
{
    Vector sum = Vector::Zero();
    for (std::size_t i = 0; i < corners.size(); ++i)
        sum += Vector(corners[i] - corners[0])
                   .cross(Vector(corners[(i + 1) % corners.size()] - corners[0]));
    return sum;
}

/// The polygon in a plane, counter-clockwise, and how far its corners may be off by rounding.
class Outline {
public:
    explicit Outline(std::span<const Point> corners)
    {
        const Vector area = area_sum(corners);
        Eigen::Index drop = 0;
        area.cwiseAbs().maxCoeff(&drop);
        // To drop a coordinate rounds nothing; the other two in turn keep the sense of rotation.
        Eigen::Index across = (drop + 1) % 3, up = (drop + 2) % 3;
        if (area[drop] < 0)
            std::swap(across, up);
        for (const Point& p : corners)
            corners_.emplace_back(p[across], p[up]);
        set_grain();
        area_ = std::abs(area[drop]);
    }

    Corner size() const { return static_cast<Corner>(corners_.size()); }
    Corner after(Corner c) const { return c + 1 == size() ? 0 : c + 1; }
    bool same(Corner a, Corner b) const { return corners_[a] == corners_[b]; }
    bool has_area() const { return area_ > grain_; }

    /// Which way a, b, c turns: 1 left, -1 right, 0 straight or within rounding of it.
    int turn(Corner a, Corner b, Corner c) const
    {
        const Point2 ab = corners_[b] - corners_[a];
        const Point2 ac = corners_[c] - corners_[a];
        const double twice_area = ab.x() * ac.y() - ab.y() * ac.x();
        return std::abs(twice_area) <= grain_ ? 0 : (twice_area > 0 ? 1 : -1);
    }

    /// Whether the edge from a to b goes up, or level to the right.
    bool rises(Corner a, Corner b) const
    {
        const Point2 ab = corners_[b] - corners_[a];
        return ab.y() > 0 || (ab.y() == 0 && ab.x() > 0);
    }

private:
    /// Corners are rounded to a unit in the last place: this much area beside an edge is none.
    void set_grain()
    {
        Point2 least = corners_[0], most = corners_[0];
        double farthest = 0;
        for (const Point2& p : corners_) {
            least = least.cwiseMin(p);
            most = most.cwiseMax(p);
            farthest = std::max(farthest, p.cwiseAbs().maxCoeff());
        }
        const double extent = (most - least).maxCoeff();
        grain_ = 4 * std::numeric_limits<double>::epsilon() * farthest * extent;
    }

    std::vector<Point2> corners_;
    double grain_ = 0;
    double area_ = 0;
};

/// Turns left at every corner, and round once only (a star turns left too, but round twice).
bool is_strictly_convex(const Outline& outline)
{
    int changes = 0;
    for (Corner a = 0; a < outline.size(); ++a) {
        const Corner b = outline.after(a), c = outline.after(b);
        if (outline.turn(a, b, c) <= 0)
            return false;
        changes += outline.rises(a, b) != outline.rises(b, c) ? 1 : 0;
    }
    return changes == 2;
}

bool edges_cross(const Outline& outline, Corner a, Corner c)
{
    const Corner b = outline.after(a), d = outline.after(c);
    return outline.turn(a, b, c) * outline.turn(a, b, d) < 0 &&
           outline.turn(c, d, a) * outline.turn(c, d, b) < 0;
}

bool crosses_itself(const Outline& outline)
{
    for (Corner a = 0; a < outline.size(); ++a)
        for (Corner c = a + 2; c < outline.size(); ++c)
            if (edges_cross(outline, a, c))
                return true;
    return false;
}

/// Cuts ears until a triangle is left. The triangles add up to the outline, so that, if none of
/// them is turned over and the outline does not cross itself, none overlap.
class EarCutter {
public:
    explicit EarCutter(const Outline& outline)
        : outline_(outline), left_(outline.size()), is_cut_(outline.size(), false),
          last_within_(outline.size(), 0)
    {
        std::iota(left_.begin(), left_.end(), Corner{0});
    }

    std::optional<std::vector<Facet>> cut()
    {
        std::vector<Facet> triangles;
        std::size_t from = 0;
        while (left_.size() > 3) {
            const std::optional<std::size_t> ear = next_ear(from);
            if (!ear)
                return std::nullopt;
            triangles.push_back(triangle_at(*ear));
            is_cut_[left_[*ear]] = true;
            left_.erase(left_.begin() + static_cast<std::ptrdiff_t>(*ear));
            // The next one but one: so that ears come from all round, and slivers are few.
            from = *ear + 1;
        }
        triangles.push_back({left_[0], left_[1], left_[2]});
        if (outline_.turn(left_[0], left_[1], left_[2]) < 0)
            return std::nullopt;
        return triangles;
    }

private:
    Facet triangle_at(std::size_t i) const
    {
        const std::size_t n = left_.size();
        return {left_[(i + n - 1) % n], left_[i], left_[(i + 1) % n]};
    }

    /// The first true ear from `from` on, around; else a corner that takes no area with it.
    std::optional<std::size_t> next_ear(std::size_t from)
    {
        const std::size_t n = left_.size();
        std::optional<std::size_t> flat;
        for (std::size_t k = 0; k < n; ++k) {
            const std::size_t i = (from + k) % n;
            const Facet t = triangle_at(i);
            const int turn = outline_.turn(t[0], t[1], t[2]);
            if (turn > 0 && is_empty(t))
                return i;
            if (turn == 0 && !flat)
                flat = i;
        }
        return flat;
    }

    /// The corner found within last time is asked first: mostly it is there still.
    bool is_empty(const Facet& t)
    {
        Corner& last = last_within_[t[1]];
        if (!is_cut_[last] && holds(t, last))
            return false;
        const auto within =
            std::find_if(left_.begin(), left_.end(), [&](Corner c) { return holds(t, c); });
        if (within == left_.end())
            return true;
        last = *within;
        return false;
    }

    /// Closed, but for corners that stand on the triangle's own: there a cut returns.
    bool holds(const Facet& t, Corner c) const
    {
        if (outline_.same(c, t[0]) || outline_.same(c, t[1]) || outline_.same(c, t[2]))
            return false;
        return outline_.turn(t[0], t[1], c) >= 0 && outline_.turn(t[1], t[2], c) >= 0 &&
               outline_.turn(t[2], t[0], c) >= 0;
    }

    const Outline& outline_;
    std::vector<Corner> left_;
    std::vector<bool> is_cut_;
    std::vector<Corner> last_within_; ///< of each corner's triangle
};

bool is_all_on_a_line(std::span<const Point> corners)
{
    const auto far_from = [&](const Point& p) {
        return *std::max_element(corners.begin(), corners.end(),
                                 [&](const Point& a, const Point& b) {
                                     return (a - p).squaredNorm() < (b - p).squaredNorm();
                                 });
    };
    const Point a = far_from(corners[0]);
    const Point b = far_from(a);
    TriangleMesh probe{{a, b, a}, {{0, 1, 2}}};
    return std::all_of(corners.begin(), corners.end(), [&](const Point& p) {
        probe.points[2] = p;
        return is_degenerate(probe, 0);
    });
}

} // namespace

std::vector<Facet> fan_of(std::size_t corners)
{
    assert(corners >= 3);
    std::vector<Facet> triangles;
    triangles.reserve(corners - 2);
    for (Corner c = 1; c + 1 < corners; ++c)
        triangles.push_back({0, c, c + 1});
    return triangles;
}

std::optional<std::vector<Facet>> triangulated(std::span<const Point> corners)
{
    assert(corners.size() >= 3);
    if (corners.size() == 3)
        return fan_of(3);
    const Outline outline(corners);
    if (is_strictly_convex(outline))
        return fan_of(corners.size());
    if (crosses_itself(outline))
        return std::nullopt;
    if (outline.has_area())
        return EarCutter(outline).cut();
    if (is_all_on_a_line(corners))
        return fan_of(corners.size());
    return std::nullopt;
}

} // namespace glim
