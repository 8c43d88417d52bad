#include "geometry/inset.h"

#include "geometry/direction.h"
#include "geometry/polygons.h"
#include "geometry/weld.h"
#include "units/trig.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace glim {

namespace {

/// Of an edge that is inclined to a facet's plane, so many stretches are looked at.
constexpr int stretches = 16;

/// Covers that meet leave slits between them, some steps of the grid wide.
constexpr double widest_slit_mm = 10 * polygon_grid_mm;

struct Segment {
    Point from, to;
    Box box;
};

TriangleMesh each_facet_once(const TriangleMesh& mesh)
{
    TriangleMesh once = welded(mesh);
    std::set<Facet> known;
    std::erase_if(once.facets, [&](Facet facet) {
        std::sort(facet.begin(), facet.end());
        return !known.insert(facet).second;
    });
    return once;
}

/// The open edges; each with a box that holds all points nearer than `by`.
std::vector<Segment> open_edges(const TriangleMesh& mesh, Length by)
{
    std::map<std::pair<std::uint32_t, std::uint32_t>, int> uses;
    for (const Facet& f : mesh.facets)
        for (int i = 0; i < 3; ++i)
            ++uses[std::minmax(f[i], f[(i + 1) % 3])];
    std::vector<Segment> open;
    for (const auto& [edge, count] : uses) {
        if (count != 1 || edge.first == edge.second)
            continue;
        Segment segment{mesh.points[edge.first], mesh.points[edge.second], {}};
        for (const Point& p : {segment.from, segment.to}) {
            segment.box.add(p - Vector::Constant(in_mm(by)));
            segment.box.add(p + Vector::Constant(in_mm(by)));
        }
        open.push_back(segment);
    }
    return open;
}

bool overlap(const Box& a, const Box& b)
{
    return (a.least.array() <= b.most.array()).all() && (b.least.array() <= a.most.array()).all();
}

bool is_slit(const PlaneTriangle& piece)
{
    const Point2 a = piece[1] - piece[0], b = piece[2] - piece[1], c = piece[0] - piece[2];
    const double longest = std::max({a.norm(), b.norm(), c.norm()});
    return std::abs(cross(a, b)) <= widest_slit_mm * longest;
}

/// Counter-clockwise.
ConvexPolygon convex_hull(std::vector<Point2> points)
{
    std::sort(points.begin(), points.end(), [](const Point2& a, const Point2& b) {
        return std::pair(a.x(), a.y()) < std::pair(b.x(), b.y());
    });
    ConvexPolygon hull;
    for (int pass = 0; pass < 2; ++pass) {
        const std::size_t base = hull.size();
        for (const Point2& p : points) {
            while (hull.size() >= base + 2 &&
                   cross(hull.back() - hull[hull.size() - 2], p - hull.back()) <= 0)
                hull.pop_back();
            hull.push_back(p);
        }
        hull.pop_back(); // the other pass begins with it
        std::reverse(points.begin(), points.end());
    }
    return hull;
}

/// A facet's plane, with the first corner as its origin.
struct FacetPlane {
    Point origin;
    ViewPlane view;

    Point2 flat(const Point& p) const { return view.project(p - origin); }
    double height(const Point& p) const { return view.toward.dot(Vector(p - origin)); }
    Point lifted(const Point2& p) const { return origin + p.x() * view.across + p.y() * view.up; }
};

/// The part of a segment that lies within `by` of a plane, its ends being so high over it; as
/// shares of its length. Empty (least >= most) if there is none.
struct Stretch {
    double least = 0, most = 1;
};
Stretch stretch_near(double low, double high, double by)
{
    if (low == high)
        return std::abs(low) < by ? Stretch{} : Stretch{1, 0};
    const auto [first, last] = std::minmax({(-by - low) / (high - low), (by - low) / (high - low)});
    return {std::max(0.0, first), std::min(1.0, last)};
}

/// What of the plane lies nearer than `by` to the segment. It is convex: the points nearer than
/// that to a segment are. Empty where the segment is too far off.
ConvexPolygon near_segment(const FacetPlane& plane, const Segment& segment, double by)
{
    const Point2 from = plane.flat(segment.from), to = plane.flat(segment.to);
    const double low = plane.height(segment.from), high = plane.height(segment.to);
    const Point2 along = to - from;
    // Starting square to the edge puts two corners on its exact parallels.
    const Angle start = along.isZero(0) ? Angle() : angle_of(along.x(), -along.y());
    const Stretch stretch = stretch_near(low, high, by);
    if (stretch.least >= stretch.most)
        return {};
    std::vector<Point2> rims;
    for (int i = 0; i <= stretches; ++i) {
        const double t = stretch.least + (stretch.most - stretch.least) * i / stretches;
        const double off = low + t * (high - low);
        const double radius = std::sqrt(std::max(0.0, by * by - off * off));
        for (int k = 0; k < inset_circle_pieces; ++k) {
            const Angle at = start + degrees(360.0 * k / inset_circle_pieces);
            rims.emplace_back(from + t * along + radius * Point2(cos(at), sin(at)));
        }
    }
    return convex_hull(std::move(rims));
}

} // namespace

TriangleMesh inset(const TriangleMesh& mesh, Length by)
{
    const TriangleMesh whole = each_facet_once(mesh);
    const std::vector<Segment> edges = open_edges(whole, by);
    TriangleMesh left;
    for (std::size_t f = 0; f < whole.facets.size(); ++f) {
        const Vector normal = area_vector(whole, f);
        if (normal.isZero(0))
            continue;
        const FacetPlane plane{whole.corner(f, 0), ViewPlane(Direction::along(normal))};
        PlaneTriangle corners;
        Box box;
        for (int i = 0; i < 3; ++i) {
            corners[i] = plane.flat(whole.corner(f, i));
            box.add(whole.corner(f, i));
        }
        std::vector<ConvexPolygon> covers;
        for (const Segment& edge : edges)
            if (overlap(edge.box, box))
                if (ConvexPolygon cover = near_segment(plane, edge, in_mm(by)); cover.size() > 2)
                    covers.push_back(std::move(cover));
        for (const PlaneTriangle& piece : uncovered_pieces(corners, covers)) {
            if (!covers.empty() && is_slit(piece))
                continue;
            const auto first = static_cast<std::uint32_t>(left.points.size());
            for (const Point2& p : piece)
                left.points.push_back(plane.lifted(p));
            left.facets.push_back({first, first + 1, first + 2});
        }
    }
    return welded(left);
}

} // namespace glim
