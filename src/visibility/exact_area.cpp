#include "visibility/exact_area.h"

#include "visibility/touch.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// A closed rectangle of the view plane.
struct Window {
    Point2 least = Point2::Constant(std::numeric_limits<double>::infinity());
    Point2 most = Point2::Constant(-std::numeric_limits<double>::infinity());

    void add(const Point2& p)
    {
        least = least.cwiseMin(p);
        most = most.cwiseMax(p);
    }
    bool meets(const Window& other) const
    {
        return (least.array() <= other.most.array()).all() &&
               (other.least.array() <= most.array()).all();
    }
};

/// A triangle as the eye has it: places in the view plane, and in space.
struct Projected {
    std::array<Point, 3> corners;
    std::array<Point2, 3> flat;
    Window window;
};

Projected project(const std::array<Point, 3>& corners, const ViewPlane& plane)
{
    Projected p{.corners = corners, .flat = {}, .window = {}};
    for (int i = 0; i < 3; ++i) {
        p.flat[i] = plane.project(corners[i]);
        p.window.add(p.flat[i]);
    }
    return p;
}

/// Obstacles sorted into squares of the view plane over the lamp, to be found by window.
class Squares {
public:
    Squares(const Window& over, std::size_t expected)
        : over_(over), per_side_(std::clamp<std::size_t>(
                           static_cast<std::size_t>(std::sqrt(double(expected))), 1, 256)),
          squares_(per_side_ * per_side_)
    {
    }

    void add(const Window& w, std::uint32_t triangle)
    {
        for_each_square(w, [&](std::vector<std::uint32_t>& square) { square.push_back(triangle); });
    }

    /// In ascending order, each once.
    std::vector<std::uint32_t> near(const Window& w)
    {
        std::vector<std::uint32_t> found;
        for_each_square(w, [&](const std::vector<std::uint32_t>& square) {
            found.insert(found.end(), square.begin(), square.end());
        });
        std::sort(found.begin(), found.end());
        found.erase(std::unique(found.begin(), found.end()), found.end());
        return found;
    }

private:
    std::size_t place(double x, double least, double most) const
    {
        const double share = most > least ? (x - least) / (most - least) : 0;
        return static_cast<std::size_t>(
            std::clamp(share * double(per_side_), 0.0, double(per_side_ - 1)));
    }

    template <class Do>
    void for_each_square(const Window& w, const Do& act)
    {
        const std::size_t x1 = place(w.most.x(), over_.least.x(), over_.most.x());
        const std::size_t y1 = place(w.most.y(), over_.least.y(), over_.most.y());
        for (std::size_t y = place(w.least.y(), over_.least.y(), over_.most.y()); y <= y1; ++y)
            for (std::size_t x = place(w.least.x(), over_.least.x(), over_.most.x()); x <= x1; ++x)
                act(squares_[y * per_side_ + x]);
    }

    Window over_;
    std::size_t per_side_;
    std::vector<std::vector<std::uint32_t>> squares_;
};

/// The lit facets that face the eye.
std::vector<Projected> facing(const TriangleMesh& lit, const Point& origin, const ViewPlane& plane)
{
    std::vector<Projected> facets;
    for (std::size_t f = 0; f < lit.facets.size(); ++f)
        if (plane.toward.dot(area_vector(lit, f)) > 0)
            facets.push_back(project(
                {lit.corner(f, 0) - origin, lit.corner(f, 1) - origin, lit.corner(f, 2) - origin},
                plane));
    return facets;
}

/// The obstacle triangles over the lamp's window that reach in front of its rearmost lit point.
std::vector<Projected> before(const std::vector<PlacedMesh>& obstacles, const Point& origin,
                              const ViewPlane& plane, const Window& window, double rearmost)
{
    std::vector<Projected> found;
    for (const PlacedMesh& obstacle : obstacles) {
        std::vector<Point> points;
        points.reserve(obstacle.mesh->points.size());
        for (const Point& p : obstacle.mesh->points)
            points.push_back(obstacle.placement(p) - origin);
        for (const Facet& f : obstacle.mesh->facets) {
            const std::array corners = {points[f[0]], points[f[1]], points[f[2]]};
            const auto behind = [&](const Point& p) { return plane.toward.dot(p) <= rearmost; };
            if (std::all_of(corners.begin(), corners.end(), behind))
                continue;
            const Projected p = project(corners, plane);
            if (p.window.meets(window))
                found.push_back(p);
        }
    }
    return found;
}

/// What of the obstacle lies before the facet's plane by more than the skip, in the view plane.
ConvexPolygon part_before(const Projected& obstacle, const Point& on_facet, const Vector& normal,
                          double skip_across)
{
    std::array<double, 3> side{};
    for (int i = 0; i < 3; ++i)
        side[i] = normal.dot(obstacle.corners[i] - on_facet) - skip_across;
    return clipped({obstacle.flat.begin(), obstacle.flat.end()}, side);
}

double perimeter(const Projected& p)
{
    return (p.flat[1] - p.flat[0]).norm() + (p.flat[2] - p.flat[1]).norm() +
           (p.flat[0] - p.flat[2]).norm();
}

} // namespace

ExactView::ExactView(TriangleMesh lit, std::vector<PlacedMesh> obstacles, Length touch)
    : lit_(std::move(lit)), obstacles_(std::move(obstacles)), touch_(touch),
      origin_(box_of(lit_).centre())
{
}

ExactArea ExactView::toward(const Direction& toward) const
{
    const ViewPlane plane(toward);
    const std::vector<Projected> facets = facing(lit_, origin_, plane);
    Window window;
    double rearmost = std::numeric_limits<double>::infinity();
    for (const Projected& facet : facets)
        for (int i = 0; i < 3; ++i) {
            window.add(facet.flat[i]);
            rearmost = std::min(rearmost, toward.dot(facet.corners[i]));
        }
    const auto obstacles = before(obstacles_, origin_, plane, window, rearmost);
    Squares squares(window, obstacles.size());
    for (std::uint32_t i = 0; i < obstacles.size(); ++i)
        squares.add(obstacles[i].window, i);

    ExactArea sum;
    std::vector<ConvexPolygon> covers;
    for (const Projected& facet : facets) {
        const Vector normal = (facet.corners[1] - facet.corners[0])
                                  .cross(facet.corners[2] - facet.corners[0])
                                  .normalized();
        const double cosine = toward.dot(normal);
        const double skip_across = in_mm(skip_along_ray(touch_, cosine)) * cosine;
        covers.clear();
        for (const std::uint32_t i : squares.near(facet.window))
            if (obstacles[i].window.meets(facet.window)) {
                ConvexPolygon cover =
                    part_before(obstacles[i], facet.corners[0], normal, skip_across);
                if (cover.size() > 2)
                    covers.push_back(std::move(cover));
            }
        sum.visible += uncovered_area(facet.flat, covers);
        sum.rounding +=
            square_millimetres(perimeter(facet) * double(covers.size() + 1) * polygon_grid_mm);
    }
    return sum;
}

} // namespace glim
