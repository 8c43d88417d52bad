#include "shapes/exact_definition.h"

#include "shapes/exact_polygons.h"
#include "visibility/touch.h"

#include <Eigen/Geometry>

#include <algorithm>

namespace glim::shapes {

namespace {

using Triangle = std::array<Point, 3>;

template <class Id>
bool holds(const std::vector<Id>& list, Id id)
{
    return std::find(list.begin(), list.end(), id) != list.end();
}

void append(std::vector<Triangle>& to, const TriangleMesh& mesh)
{
    for (std::size_t f = 0; f < mesh.facets.size(); ++f)
        to.push_back({mesh.corner(f, 0), mesh.corner(f, 1), mesh.corner(f, 2)});
}

bool same_place(const Triangle& a, const Triangle& b)
{
    return std::is_permutation(a.begin(), a.end(), b.begin());
}

/// A lit facet that a file repeats shines once.
std::vector<Triangle> each_once(const std::vector<Triangle>& all)
{
    std::vector<Triangle> once;
    for (const Triangle& t : all)
        if (std::none_of(once.begin(), once.end(),
                         [&](const Triangle& known) { return same_place(known, t); }))
            once.push_back(t);
    return once;
}

Vector twice_area(const Triangle& t) { return (t[1] - t[0]).cross(t[2] - t[0]); }

/// Axes of the view plane, not those that the program uses: an area must not depend on them.
struct Axes {
    Vector across;
    Vector up;

    explicit Axes(const Direction& toward)
        : across(toward.vector().unitOrthogonal()), up(toward.vector().cross(across))
    {
    }
    Point2 flat(const Point& p) const { return {across.dot(p), up.dot(p)}; }
    std::array<Point2, 3> flat(const Triangle& t) const
    {
        return {flat(t[0]), flat(t[1]), flat(t[2])};
    }
};

bool apart(const std::array<Point2, 3>& a, const std::array<Point2, 3>& b)
{
    for (int axis = 0; axis < 2; ++axis) {
        const auto [a_least, a_most] = std::minmax({a[0][axis], a[1][axis], a[2][axis]});
        const auto [b_least, b_most] = std::minmax({b[0][axis], b[1][axis], b[2][axis]});
        if (a_most < b_least || b_most < a_least)
            return true;
    }
    return false;
}

} // namespace

ExactDefinition::ExactDefinition(const Study& study, const LampStanding& lamp)
    : touch_(study.sampling.touch)
{
    const Placement across = study.vehicle.across_median();
    const Lamp& seen = study.lamps[lamp.lamp];
    for (const SurfaceId id : study.surfaces.ids()) {
        const Surface& surface = study.surfaces[id];
        if (surface.role != Role::opaque && surface.role != Role::emitting)
            continue;
        for (const bool twin : {false, true}) {
            if (twin && surface.mirror != MirrorRule::yes)
                continue;
            const TriangleMesh mesh = twin ? placed(surface.mesh, across) : surface.mesh;
            const bool own = twin == lamp.twin || surface.mirror == MirrorRule::straddles;
            if (own && holds(seen.emits, id))
                append(lit_, mesh);
            if (holds(surface.clear_for, lamp.lamp))
                continue;
            append(all_, mesh);
            if (own && (holds(seen.emits, id) || holds(seen.approved_with, id)))
                append(approved_, mesh);
        }
    }
    lit_ = each_once(lit_);
    if (lit_.empty())
        return;
    const Point middle = lit_.front()[0];
    for (std::vector<Triangle>* list : {&lit_, &all_, &approved_})
        for (Triangle& t : *list)
            for (Point& p : t)
                p -= middle;
}

Area ExactDefinition::left_by(const std::vector<Triangle>& obstacles, const Direction& toward) const
{
    const Axes axes(toward);
    Area sum;
    for (const Triangle& facet : lit_) {
        const Vector area = twice_area(facet);
        if (!(toward.dot(area) > 0))
            continue;
        const Vector normal = area.normalized();
        const double cosine = toward.dot(normal);
        const double skip_across_mm = in_mm(skip_along_ray(touch_, cosine)) * cosine;
        const std::array flat = axes.flat(facet);
        std::vector<CutCover> covers;
        for (const Triangle& obstacle : obstacles) {
            CutCover cover{.corners = axes.flat(obstacle), .side = {}};
            for (int i = 0; i < 3; ++i)
                cover.side[i] = normal.dot(obstacle[i] - facet[0]) - skip_across_mm;
            const bool before = std::any_of(cover.side.begin(), cover.side.end(),
                                            [](double side) { return side > 0; });
            if (before && !apart(cover.corners, flat))
                covers.push_back(cover);
        }
        sum += exactly_uncovered(flat, covers);
    }
    return sum;
}

} // namespace glim::shapes
