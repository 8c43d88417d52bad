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

/// A triangle as the eye has it: across and up in the view plane, and third towards the eye.
struct Projected {
    std::array<Point, 3> corners;
    Window window;
    bool approved = true; ///< of an obstacle

    std::array<Point2, 3> flat() const
    {
        return {corners[0].head<2>(), corners[1].head<2>(), corners[2].head<2>()};
    }
};

Projected projected(const std::array<Point, 3>& corners)
{
    Projected p{.corners = corners, .window = {}, .approved = true};
    for (const Point& c : corners)
        p.window.add(c.head<2>());
    return p;
}

/// From a mesh's own frame straight into the eye's, about the lamp's origin.
struct IntoView {
    Eigen::Matrix3d turn;
    Vector shift;

    IntoView(const ViewPlane& plane, const Placement& placement, const Point& origin)
    {
        Eigen::Matrix3d view;
        view << plane.across.transpose(), plane.up.transpose(), plane.toward.vector().transpose();
        turn = view * placement.matrix().linear();
        shift = view * (placement.matrix().translation() - origin);
    }

    std::vector<Point> operator()(const std::vector<Point>& points) const
    {
        std::vector<Point> seen;
        seen.reserve(points.size());
        for (const Point& p : points)
            seen.push_back(turn * p + shift);
        return seen;
    }
};

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

Vector normal_of(const Projected& facet)
{
    return (facet.corners[1] - facet.corners[0])
        .cross(facet.corners[2] - facet.corners[0])
        .normalized();
}

/// The lit facets that face the eye.
std::vector<Projected> facing(const TriangleMesh& lit, const IntoView& into_view)
{
    const std::vector<Point> points = into_view(lit.points);
    std::vector<Projected> facets;
    for (const Facet& f : lit.facets) {
        const Projected facet = projected({points[f[0]], points[f[1]], points[f[2]]});
        const Vector area =
            (facet.corners[1] - facet.corners[0]).cross(facet.corners[2] - facet.corners[0]);
        if (area.z() > 0)
            facets.push_back(facet);
    }
    return facets;
}

/// The obstacle triangles over the lamp's window that reach in front of its rearmost lit point.
void gather_before(const PlacedMesh& obstacle, const IntoView& into_view, const Window& window,
                   double rearmost, std::vector<Projected>& found)
{
    const std::vector<Point> points = into_view(obstacle.mesh->points);
    for (const Facet& f : obstacle.mesh->facets) {
        const Point& a = points[f[0]];
        const Point& b = points[f[1]];
        const Point& c = points[f[2]];
        // Most triangles of a body are elsewhere: four comparisons see most of them off.
        if (std::max({a.x(), b.x(), c.x()}) < window.least.x() ||
            std::min({a.x(), b.x(), c.x()}) > window.most.x() ||
            std::max({a.y(), b.y(), c.y()}) < window.least.y() ||
            std::min({a.y(), b.y(), c.y()}) > window.most.y() ||
            std::max({a.z(), b.z(), c.z()}) <= rearmost)
            continue;
        found.push_back(projected({a, b, c}));
        found.back().approved = obstacle.approved;
    }
}

/// What of the obstacle lies before the facet's plane by more than the skip, in the view plane.
ConvexPolygon part_before(const Projected& obstacle, const Point& on_facet, const Vector& normal,
                          double skip_across)
{
    std::array<double, 3> side{};
    for (int i = 0; i < 3; ++i)
        side[i] = normal.dot(obstacle.corners[i] - on_facet) - skip_across;
    const std::array flat = obstacle.flat();
    return clipped({flat.begin(), flat.end()}, side);
}

double perimeter(const std::array<Point2, 3>& p)
{
    return (p[1] - p[0]).norm() + (p[2] - p[1]).norm() + (p[0] - p[2]).norm();
}

/// What comes before one lit facet, in the view plane.
struct Covers {
    std::vector<ConvexPolygon> approved, others;
};

Covers covers_of(const Projected& facet, const std::vector<Projected>& obstacles,
                 const std::vector<std::uint32_t>& near, Length touch)
{
    const Vector normal = normal_of(facet);
    const double skip_across = in_mm(skip_along_ray(touch, normal.z())) * normal.z();
    Covers covers;
    for (const std::uint32_t i : near) {
        if (!obstacles[i].window.meets(facet.window))
            continue;
        ConvexPolygon cover = part_before(obstacles[i], facet.corners[0], normal, skip_across);
        if (cover.size() > 2)
            (obstacles[i].approved ? covers.approved : covers.others).push_back(std::move(cover));
    }
    return covers;
}

ExactArea left_of(const Projected& facet, const std::vector<ConvexPolygon>& covers)
{
    const std::array flat = facet.flat();
    if (covers.empty())
        return {uncovered_area(flat, covers), Area{}}; // closed form: no grid comes into it
    return {uncovered_area(flat, covers),
            square_millimetres(perimeter(flat) * double(covers.size() + 1) * polygon_grid_mm)};
}

std::vector<ConvexPolygon> all_of(Covers covers)
{
    covers.approved.insert(covers.approved.end(), std::make_move_iterator(covers.others.begin()),
                           std::make_move_iterator(covers.others.end()));
    return std::move(covers.approved);
}

/// Calls `act(facet, covers)` for each lit facet that faces the eye.
template <class Act>
void visit_facets(const std::vector<Projected>& facets, const std::vector<Projected>& before,
                  const Window& window, Length touch, const Act& act)
{
    Squares squares(window, before.size());
    for (std::uint32_t i = 0; i < before.size(); ++i)
        squares.add(before[i].window, i);
    for (const Projected& facet : facets)
        act(facet, covers_of(facet, before, squares.near(facet.window), touch));
}

} // namespace

ExactView::ExactView(TriangleMesh lit, std::vector<PlacedMesh> obstacles, Length touch)
    : lit_(std::move(lit)), obstacles_(std::move(obstacles)), touch_(touch),
      origin_(box_of(lit_).centre())
{
}

template <class Act>
void ExactView::visit(const Direction& toward, const Act& act) const
{
    const ViewPlane plane(toward);
    const std::vector<Projected> facets = facing(lit_, IntoView(plane, Placement(), origin_));
    Window window;
    double rearmost = std::numeric_limits<double>::infinity();
    for (const Projected& facet : facets)
        for (const Point& corner : facet.corners) {
            window.add(corner.head<2>());
            rearmost = std::min(rearmost, corner.z());
        }
    std::vector<Projected> before;
    for (const PlacedMesh& obstacle : obstacles_)
        gather_before(obstacle, IntoView(plane, obstacle.placement, origin_), window, rearmost,
                      before);
    visit_facets(facets, before, window, touch_, act);
}

ExactArea ExactView::toward(const Direction& toward) const
{
    ExactArea sum;
    visit(toward, [&](const Projected& facet, Covers covers) {
        const ExactArea left = left_of(facet, all_of(std::move(covers)));
        sum.visible += left.visible;
        sum.rounding += left.rounding;
    });
    return sum;
}

ExactHidden ExactView::hidden_toward(const Direction& toward) const
{
    ExactHidden sum;
    visit(toward, [&](const Projected& facet, Covers covers) {
        if (covers.others.empty())
            return;
        const ExactArea approved = left_of(facet, covers.approved);
        const ExactArea visible = left_of(facet, all_of(std::move(covers)));
        // Less cannot be hidden than nothing: below it is the grid of the union.
        sum.hidden += std::max(Area{}, approved.visible - visible.visible);
        sum.rounding += approved.rounding + visible.rounding;
    });
    return sum;
}

} // namespace glim
