#include "visibility/rim_doubts.h"

#include "geometry/box_tree.h"
#include "units/trig.h"
#include "visibility/lit_look.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace glim {

namespace {

using Hidden = LitLook::Hidden;

RayStart start_at(const Point& p, float skip)
{
    return {static_cast<float>(p.x()), static_cast<float>(p.y()), static_cast<float>(p.z()), skip};
}

/// Whatever faces the eye on one side of an edge alone lies on the outline.
std::vector<LitLattice::Index> outline_corners(const LitLook& look)
{
    const LitLattice& lattice = look.lattice();
    std::vector<int> facing(lattice.edges().size());
    for (const LitLattice::Cell& cell : lattice.cells())
        for (const LitLattice::Index e : cell.edges)
            facing[e] += look.faces(cell) ? 1 : 0;
    std::vector<LitLattice::Index> corners;
    for (std::size_t e = 0; e < facing.size(); ++e)
        if (facing[e] == 1)
            corners.insert(corners.end(), lattice.edges()[e].ends.begin(),
                           lattice.edges()[e].ends.end());
    std::sort(corners.begin(), corners.end());
    corners.erase(std::unique(corners.begin(), corners.end()), corners.end());
    return corners;
}

/// What is asked of one direction: who stands in the way, and how far that may move.
struct Beside {
    const Hidden& hidden; ///< of the lattice's corners
    const Caster& obstacles;
    Length reach;
};

/// Where, beside the lit face, it is otherwise than at its outline: from there a rim may come in.
/// Rings of points are asked around each corner of the outline, a pitch apart.
void add_points_beside(const LitLook& look, const Beside& beside, std::vector<Point>& points)
{
    constexpr int ways = 12;
    const ViewPlane plane(look.toward());
    const double pitch = in_mm(look.lattice().pitch());
    const int rings = static_cast<int>(std::ceil(in_mm(beside.reach) / pitch));
    std::vector<Point> asked;
    std::vector<RayStart> starts;
    Hidden expected;
    for (const LitLattice::Index v : outline_corners(look))
        for (int i = 0; i < rings * ways; ++i) {
            const Angle angle = degrees(360.0 / ways * (i % ways));
            const Vector off = cos(angle) * plane.across + sin(angle) * plane.up;
            const int ring = 1 + i / ways;
            asked.emplace_back(look.lattice().vertices()[v] + ring * pitch * off);
            starts.push_back(start_at(asked.back(), std::max(0.0F, look.skip(v))));
            expected.push_back(beside.hidden[v]);
        }
    const Hidden found = beside.obstacles.occluded(look.toward(), starts);
    for (std::size_t i = 0; i < found.size(); ++i)
        if (found[i] != expected[i])
            points.push_back(asked[i]);
}

/// Middles of edges across which a rim runs.
void add_rim_points(const LitLook& look, const Hidden& hidden, std::vector<Point>& points)
{
    const LitLattice& lattice = look.lattice();
    for (const LitLattice::Edge& edge : lattice.edges()) {
        const auto [a, b] = edge.ends;
        if (hidden[a] != hidden[b] && look.skip(a) >= 0 && look.skip(b) >= 0)
            points.push_back((lattice.vertices()[a] + lattice.vertices()[b]) / 2);
    }
}

/// Corners before or behind which something stands so near that it may change sides.
void add_touched_points(const LitLook& look, const Caster& strangers, Length reach,
                        std::vector<Point>& points)
{
    LitLook::FrontCorners corners = look.front_corners();
    const Eigen::Vector3f d = look.toward().vector().cast<float>();
    const auto back = static_cast<float>(in_mm(reach));
    for (RayStart& start : corners.starts) {
        const float by = start.skip - back;
        start = {start.x + by * d.x(), start.y + by * d.y(), start.z + by * d.z(), 0};
    }
    const Hidden touched = strangers.occluded(look.toward(), corners.starts, 2 * reach);
    for (std::size_t i = 0; i < touched.size(); ++i)
        if (touched[i] != 0)
            points.push_back(look.lattice().vertices()[corners.vertices[i]]);
}

/// How far, as the eye sees it, the nearest of some points is.
class Neighbourhood {
public:
    Neighbourhood(const std::vector<Point>& points, const ViewPlane& plane)
        : plane_(plane), tree_(boxes(points, plane))
    {
    }

    /// Infinity where it is farther than `reach`.
    Length nearest(const Point& p, Length reach) const
    {
        const Point2 at = plane_.project(p);
        double squared = in_mm(reach) * in_mm(reach);
        bool found = false;
        tree_.visit(BoxTree<2>::BoxAround(at), squared, [&](std::size_t i) {
            const double here = (places_[i] - at).squaredNorm();
            found = found || here <= squared;
            squared = std::min(squared, here);
        });
        return millimetres(found ? std::sqrt(squared) : std::numeric_limits<double>::infinity());
    }

private:
    std::vector<BoxTree<2>::BoxAround> boxes(const std::vector<Point>& points,
                                             const ViewPlane& plane)
    {
        std::vector<BoxTree<2>::BoxAround> all;
        for (const Point& p : points) {
            places_.push_back(plane.project(p));
            all.emplace_back(places_.back());
        }
        return all;
    }

    ViewPlane plane_;
    std::vector<Point2> places_;
    BoxTree<2> tree_;
};

} // namespace

std::vector<float> corner_doubts(const RimWitness& witness, const LitLattice& lattice,
                                 const Direction& toward, Length reach)
{
    const LitLook fine(witness.fine, toward);
    const Hidden hidden = fine.hidden_by(witness.fine.all);
    std::vector<Point> doubtful;
    add_rim_points(fine, hidden, doubtful);
    add_points_beside(fine, {hidden, witness.fine.all, reach}, doubtful);
    add_touched_points(fine, witness.strangers, reach, doubtful);
    const Neighbourhood near(doubtful, ViewPlane(toward));
    // Rims lie within an edge or a ring of the points that stand for them.
    const Length pad = witness.fine.lattice.pitch();
    std::vector<float> doubts;
    doubts.reserve(lattice.vertices().size());
    for (const Point& p : lattice.vertices())
        doubts.push_back(
            static_cast<float>(std::max(0.0, in_mm(near.nearest(p, reach + pad) - pad))));
    return doubts;
}

} // namespace glim
