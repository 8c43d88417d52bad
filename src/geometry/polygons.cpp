#include "geometry/polygons.h"

#include "geometry/grid_loops.h"
#include "geometry/triangulate.h"

#include <polyclipping/clipper.hpp>

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// Of what an outline is grown by, so much may be taken back where corners are left out.
constexpr double cleaned_share = 0.7;

double signed_area(std::span<const Point2> polygon)
{
    double twice = 0;
    for (std::size_t i = 2; i < polygon.size(); ++i)
        twice += cross(polygon[i - 1] - polygon[0], polygon[i] - polygon[0]);
    return twice / 2;
}

void clip(const ConvexPolygon& polygon, std::span<const double> side, ConvexPolygon& kept)
{
    kept.clear();
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const std::size_t next = i + 1 < polygon.size() ? i + 1 : 0;
        if (side[i] >= 0)
            kept.push_back(polygon[i]);
        if ((side[i] < 0) != (side[next] < 0) && side[i] != side[next]) {
            const double along = side[i] / (side[i] - side[next]);
            kept.push_back(polygon[i] + along * (polygon[next] - polygon[i]));
        }
    }
}

/// Cuts one cover after another to a counter-clockwise triangle. Most miss it: they are seen off
/// first, and memory is asked for once.
class Trimmer {
public:
    explicit Trimmer(const std::array<Point2, 3>& triangle) : triangle_(triangle) {}

    /// What of `cover` lies in the triangle; good until the next call.
    const ConvexPolygon& operator()(const ConvexPolygon& cover)
    {
        for (int edge = 0; edge < 3; ++edge)
            if (lies_outside(cover, edge)) {
                piece_.clear();
                return piece_;
            }
        piece_ = cover;
        for (int edge = 0; edge < 3; ++edge)
            cut_at(edge);
        return piece_;
    }

private:
    double side_of(const Point2& p, int edge) const
    {
        const Point2& from = triangle_[edge];
        return cross(triangle_[(edge + 1) % 3] - from, p - from);
    }

    bool lies_outside(const ConvexPolygon& cover, int edge) const
    {
        return std::all_of(cover.begin(), cover.end(),
                           [&](const Point2& p) { return side_of(p, edge) < 0; });
    }

    void cut_at(int edge)
    {
        side_.clear();
        for (const Point2& p : piece_)
            side_.push_back(side_of(p, edge));
        clip(piece_, side_, cut_);
        piece_.swap(cut_);
    }

    std::array<Point2, 3> triangle_;
    ConvexPolygon piece_, cut_;
    std::vector<double> side_;
};

/// On the integer grid about `centre`, counter-clockwise.
GridLoop loop_of(std::span<const Point2> polygon, const Point2& centre)
{
    GridLoop loop;
    loop.reserve(polygon.size());
    for (const Point2& p : polygon)
        loop.push_back({std::llround((p.x() - centre.x()) / polygon_grid_mm),
                        std::llround((p.y() - centre.y()) / polygon_grid_mm)});
    if (signed_area(polygon) < 0)
        std::reverse(loop.begin(), loop.end());
    return loop;
}

ClipperLib::Path path_of(const GridLoop& loop)
{
    ClipperLib::Path path;
    path.reserve(loop.size());
    for (const GridPoint& p : loop)
        path.emplace_back(p[0], p[1]);
    return path;
}

/// Where any of these lies. Obstacles are meshes: by far most edges are shared by two pieces, and
/// uniting what is left of them costs a small part of uniting the pieces.
ClipperLib::Paths rims_of(const std::vector<GridLoop>& pieces)
{
    ClipperLib::Paths paths;
    for (const GridLoop& rim : without_shared_edges(pieces))
        paths.push_back(path_of(rim));
    return paths;
}

double united_area(std::span<const ConvexPolygon> pieces, const Point2& centre)
{
    std::vector<GridLoop> loops;
    loops.reserve(pieces.size());
    for (const ConvexPolygon& piece : pieces)
        loops.push_back(loop_of(piece, centre));
    ClipperLib::Clipper clipper;
    clipper.AddPaths(rims_of(loops), ClipperLib::ptSubject, true);
    ClipperLib::Paths united;
    clipper.Execute(ClipperLib::ctUnion, united, ClipperLib::pftNonZero, ClipperLib::pftNonZero);
    double sum = 0;
    for (const ClipperLib::Path& path : united)
        sum += ClipperLib::Area(path); // holes come out negative
    return sum * polygon_grid_mm * polygon_grid_mm;
}

using Triangles = std::vector<PlaneTriangle>;

Point2 point_of(const ClipperLib::IntPoint& p, const Point2& centre)
{
    return centre + polygon_grid_mm * Point2(static_cast<double>(p.X), static_cast<double>(p.Y));
}

/// What of `paths` lies between the x of `from` and of `to`, both on the grid.
ClipperLib::Paths between(const ClipperLib::Paths& paths, ClipperLib::cInt from,
                          ClipperLib::cInt to)
{
    ClipperLib::cInt low = 0, high = 0;
    for (const ClipperLib::Path& path : paths)
        for (const ClipperLib::IntPoint& p : path) {
            low = std::min(low, p.Y - 1);
            high = std::max(high, p.Y + 1);
        }
    ClipperLib::Clipper clipper;
    clipper.StrictlySimple(true);
    clipper.AddPaths(paths, ClipperLib::ptSubject, true);
    clipper.AddPath({{from, low}, {to, low}, {to, high}, {from, high}}, ClipperLib::ptClip, true);
    ClipperLib::Paths inner;
    clipper.Execute(ClipperLib::ctIntersection, inner, ClipperLib::pftNonZero,
                    ClipperLib::pftNonZero);
    return inner;
}

/// Adds the triangles of a polygon without holes. False if it cannot be cut as it is.
bool add_triangles(const ClipperLib::Path& path, const Point2& centre, Triangles& triangles)
{
    std::vector<Point> corners;
    for (const ClipperLib::IntPoint& p : path) {
        const Point2 corner = point_of(p, centre);
        corners.emplace_back(corner.x(), corner.y(), 0);
    }
    const std::optional<std::vector<Facet>> facets = triangulated(corners);
    if (!facets)
        return false;
    for (const Facet& f : *facets)
        triangles.push_back({Point2(corners[f[0]].head<2>()), Point2(corners[f[1]].head<2>()),
                             Point2(corners[f[2]].head<2>())});
    return true;
}

/// Cuts regions with holes and all into triangles: where a hole is in the way, both halves of the
/// whole are cut by themselves, until none is left.
void cut_up(const ClipperLib::Paths& paths, const Point2& centre, Triangles& triangles)
{
    Triangles cut;
    const bool is_simple =
        std::all_of(paths.begin(), paths.end(), [&](const ClipperLib::Path& path) {
            return ClipperLib::Orientation(path) && add_triangles(path, centre, cut);
        });
    if (is_simple) {
        triangles.insert(triangles.end(), cut.begin(), cut.end());
        return;
    }
    ClipperLib::cInt least = paths.front().front().X, most = least;
    for (const ClipperLib::Path& path : paths)
        for (const ClipperLib::IntPoint& p : path) {
            least = std::min(least, p.X);
            most = std::max(most, p.X);
        }
    if (most - least < 2)
        return;
    const ClipperLib::cInt middle = least + (most - least) / 2;
    cut_up(between(paths, least, middle), centre, triangles);
    cut_up(between(paths, middle, most), centre, triangles);
}

} // namespace

ConvexPolygon clipped(const ConvexPolygon& polygon, std::span<const double> side)
{
    ConvexPolygon kept;
    clip(polygon, side, kept);
    return kept;
}

ConvexPolygon common_part(const ConvexPolygon& polygon, const ConvexPolygon& within)
{
    ConvexPolygon kept = polygon;
    std::vector<double> side;
    for (std::size_t i = 0; i < within.size() && !kept.empty(); ++i) {
        const Point2& from = within[i];
        const Point2 along = within[(i + 1) % within.size()] - from;
        side.clear();
        for (const Point2& p : kept)
            side.push_back(cross(along, p - from));
        kept = clipped(kept, side);
    }
    return kept;
}

std::vector<std::vector<Point2>> united_outlines(std::span<const std::vector<Point2>> polygons,
                                                 Length grown)
{
    if (polygons.empty())
        return {};
    const Point2 centre = polygons.front().front();
    ClipperLib::Clipper clipper;
    for (const std::vector<Point2>& polygon : polygons)
        clipper.AddPath(path_of(loop_of(polygon, centre)), ClipperLib::ptSubject, true);
    ClipperLib::Paths united;
    clipper.Execute(ClipperLib::ctUnion, united, ClipperLib::pftNonZero, ClipperLib::pftNonZero);
    ClipperLib::ClipperOffset offset;
    for (const ClipperLib::Path& path : united)
        if (ClipperLib::Orientation(path))
            offset.AddPath(path, ClipperLib::jtMiter, ClipperLib::etClosedPolygon);
    ClipperLib::Paths outer;
    offset.Execute(outer, in_mm(grown) / polygon_grid_mm);
    // A corner that goes was no farther than this from its neighbours' line: less than it was
    // grown.
    if (grown > Length())
        ClipperLib::CleanPolygons(outer, cleaned_share * in_mm(grown) / polygon_grid_mm);
    std::vector<std::vector<Point2>> outlines;
    for (const ClipperLib::Path& path : outer) {
        std::vector<Point2> outline;
        for (const ClipperLib::IntPoint& p : path)
            outline.push_back(point_of(p, centre));
        if (ClipperLib::Orientation(path))
            outlines.push_back(std::move(outline));
    }
    return outlines;
}

Area area_of(const ConvexPolygon& polygon)
{
    return square_millimetres(std::abs(signed_area(polygon)));
}

Area uncovered_area(const std::array<Point2, 3>& triangle, std::span<const ConvexPolygon> covers)
{
    std::array<Point2, 3> subject = triangle;
    double whole = signed_area(subject);
    if (whole < 0) {
        std::swap(subject[1], subject[2]);
        whole = -whole;
    }
    std::vector<ConvexPolygon> pieces;
    Trimmer inside(subject);
    for (const ConvexPolygon& cover : covers) {
        const ConvexPolygon& piece = inside(cover);
        const double size = in_mm2(area_of(piece));
        if (size >= whole)
            return {};
        if (size > 0)
            pieces.push_back(piece);
    }
    if (pieces.empty())
        return square_millimetres(whole);
    const double covered =
        pieces.size() == 1 ? in_mm2(area_of(pieces.front())) : united_area(pieces, subject[0]);
    return square_millimetres(std::max(0.0, whole - covered));
}

std::vector<PlaneTriangle> uncovered_pieces(const PlaneTriangle& triangle,
                                            std::span<const ConvexPolygon> covers)
{
    PlaneTriangle subject = triangle;
    const bool is_clockwise = signed_area(subject) < 0;
    if (is_clockwise)
        std::swap(subject[1], subject[2]);
    ClipperLib::Clipper clipper;
    clipper.StrictlySimple(true);
    std::vector<GridLoop> pieces_covered;
    Trimmer trim(subject);
    for (const ConvexPolygon& cover : covers)
        if (const ConvexPolygon& piece = trim(cover); in_mm2(area_of(piece)) > 0)
            pieces_covered.push_back(loop_of(piece, subject[0]));
    if (pieces_covered.empty())
        return {triangle};
    clipper.AddPaths(rims_of(pieces_covered), ClipperLib::ptClip, true);
    clipper.AddPath(path_of(loop_of(subject, subject[0])), ClipperLib::ptSubject, true);
    ClipperLib::Paths left;
    clipper.Execute(ClipperLib::ctDifference, left, ClipperLib::pftNonZero, ClipperLib::pftNonZero);
    Triangles pieces;
    cut_up(left, subject[0], pieces);
    if (is_clockwise)
        for (PlaneTriangle& piece : pieces)
            std::swap(piece[1], piece[2]);
    return pieces;
}

} // namespace glim
