#include "visibility/exact_area.h"

#include "machine/stop.h"
#include "visibility/touch.h"
#include "visibility/view_squares.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// A triangle as the eye has it: across and up in the view plane, and third towards the eye.
struct Projected {
    std::array<Point, 3> corners;
    ViewWindow window;
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

    /// About the box as the eye has it.
    Box operator()(const Box& box) const
    {
        const Point centre = turn * box.centre() + shift;
        const Vector half = turn.cwiseAbs() * box.size() / 2;
        return {centre - half, centre + half};
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

/// Where the lit facets that face the eye are, for it.
struct LitWindow {
    ViewWindow over;
    double rearmost = std::numeric_limits<double>::infinity();

    explicit LitWindow(const std::vector<Projected>& facets)
    {
        for (const Projected& facet : facets)
            for (const Point& corner : facet.corners) {
                over.add(corner.head<2>());
                rearmost = std::min(rearmost, corner.z());
            }
    }
    bool may_be_hidden_by(const Box& seen) const
    {
        return over.meets({seen.least.head<2>(), seen.most.head<2>()}) && seen.most.z() > rearmost;
    }
};

/// The obstacle triangles over the lamp's window that reach in front of its rearmost lit point.
void gather_before(const PlacedMesh& obstacle, const IntoView& into_view, const LitWindow& lit,
                   std::vector<Projected>& found)
{
    const std::vector<Point> points = into_view(obstacle.mesh->points);
    const ViewWindow& window = lit.over;
    for (const Facet& f : obstacle.mesh->facets) {
        const Point& a = points[f[0]];
        const Point& b = points[f[1]];
        const Point& c = points[f[2]];
        // Most triangles of a body are elsewhere: four comparisons see most of them off.
        if (std::max({a.x(), b.x(), c.x()}) < window.least.x() ||
            std::min({a.x(), b.x(), c.x()}) > window.most.x() ||
            std::max({a.y(), b.y(), c.y()}) < window.least.y() ||
            std::min({a.y(), b.y(), c.y()}) > window.most.y() ||
            std::max({a.z(), b.z(), c.z()}) <= lit.rearmost)
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
    if (std::max({side[0], side[1], side[2]}) < 0)
        return {};
    const std::array flat = obstacle.flat();
    ConvexPolygon whole(flat.begin(), flat.end());
    return std::min({side[0], side[1], side[2]}) >= 0 ? whole : clipped(whole, side);
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
        ConvexPolygon cover = part_before(obstacles[i], facet.corners[0], normal, skip_across);
        if (cover.size() > 2)
            (obstacles[i].approved ? covers.approved : covers.others).push_back(std::move(cover));
    }
    return covers;
}

/// An area and how far it may be off, mm2.
struct Rounded {
    double area = 0;
    double rounding = 0;
};

Rounded left_of(const Projected& facet, const std::vector<ConvexPolygon>& covers)
{
    const std::array flat = facet.flat();
    const double area = in_mm2(uncovered_area(flat, covers));
    if (covers.empty())
        return {area, 0}; // closed form: no grid comes into it
    return {area, perimeter(flat) * double(covers.size() + 1) * polygon_grid_mm};
}

std::vector<ConvexPolygon> all_of(Covers covers)
{
    covers.approved.insert(covers.approved.end(), std::make_move_iterator(covers.others.begin()),
                           std::make_move_iterator(covers.others.end()));
    return std::move(covers.approved);
}

/// Facets shared out at a time: enough to be worth a thread's while.
constexpr std::size_t facets_at_once = 64;

/// Sums `of(facet, covers)`, in the same order for any number of threads.
template <class Of>
Rounded sum_over(const std::vector<Projected>& facets, const std::vector<Projected>& before,
                 Length touch, const Workers& workers, const Of& of)
{
    ViewSquares squares(LitWindow(facets).over, before.size());
    for (const Projected& obstacle : before)
        squares.add(obstacle.window);
    std::vector<Rounded> parts((facets.size() + facets_at_once - 1) / facets_at_once);
    std::vector<ViewSquares::Asker> askers(workers.count());
    const bool whole =
        for_each_index(parts.size(), workers.silent(), [&](std::size_t part, unsigned w) {
            const std::size_t end = std::min(facets.size(), (part + 1) * facets_at_once);
            for (std::size_t f = part * facets_at_once; f < end; ++f) {
                const auto& near = squares.near(facets[f].window, askers[w]);
                const Rounded one = of(facets[f], covers_of(facets[f], before, near, touch));
                parts[part].area += one.area;
                parts[part].rounding += one.rounding;
            }
        });
    if (!whole)
        throw Stopped();
    Rounded sum;
    for (const Rounded& part : parts) {
        sum.area += part.area;
        sum.rounding += part.rounding;
    }
    return sum;
}

const Workers this_thread{.threads = 1, .stop = {}, .progress = {}};

} // namespace

/// One direction's lit facets that face the eye, and the obstacle triangles that may hide them.
struct ExactView::Scene {
    std::vector<Projected> facets, before;
};

ExactView::ExactView(TriangleMesh lit, std::vector<PlacedMesh> obstacles, Length touch)
    : lit_(std::move(lit)), obstacles_(std::move(obstacles)), touch_(touch),
      origin_(box_of(lit_).centre())
{
    for (const PlacedMesh& obstacle : obstacles_)
        boxes_.push_back(box_of(*obstacle.mesh));
}

ExactView::Scene ExactView::scene_toward(const Direction& toward) const
{
    const ViewPlane plane(toward);
    Scene scene{facing(lit_, IntoView(plane, Placement(), origin_)), {}};
    const LitWindow lit(scene.facets);
    for (std::size_t i = 0; i < obstacles_.size(); ++i) {
        const IntoView into_view(plane, obstacles_[i].placement, origin_);
        if (!boxes_[i].empty() && lit.may_be_hidden_by(into_view(boxes_[i])))
            gather_before(obstacles_[i], into_view, lit, scene.before);
    }
    return scene;
}

ExactArea ExactView::toward(const Direction& direction) const
{
    return toward(direction, this_thread);
}

ExactArea ExactView::toward(const Direction& toward, const Workers& workers) const
{
    const Scene scene = scene_toward(toward);
    const Rounded sum = sum_over(scene.facets, scene.before, touch_, workers,
                                 [](const Projected& facet, Covers covers) {
                                     return left_of(facet, all_of(std::move(covers)));
                                 });
    return {square_millimetres(sum.area), square_millimetres(sum.rounding)};
}

ExactHidden ExactView::hidden_toward(const Direction& direction) const
{
    return hidden_toward(direction, this_thread);
}

ExactHidden ExactView::hidden_toward(const Direction& toward, const Workers& workers) const
{
    const Scene scene = scene_toward(toward);
    const Rounded sum = sum_over(
        scene.facets, scene.before, touch_, workers, [](const Projected& facet, Covers covers) {
            if (covers.others.empty())
                return Rounded{};
            const Rounded approved = left_of(facet, covers.approved);
            const Rounded visible = left_of(facet, all_of(std::move(covers)));
            // Less cannot be hidden than nothing: below it is the grid of the union.
            return Rounded{std::max(0.0, approved.area - visible.area),
                           approved.rounding + visible.rounding};
        });
    return {square_millimetres(sum.area), square_millimetres(sum.rounding)};
}

} // namespace glim
