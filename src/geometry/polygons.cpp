#include "geometry/polygons.h"

#include <polyclipping/clipper.hpp>

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

double signed_area(std::span<const Point2> polygon)
{
    double twice = 0;
    for (std::size_t i = 2; i < polygon.size(); ++i)
        twice += cross(polygon[i - 1] - polygon[0], polygon[i] - polygon[0]);
    return twice / 2;
}

/// What of `cover` lies in the counter-clockwise `triangle`.
ConvexPolygon inside(const std::array<Point2, 3>& triangle, ConvexPolygon cover)
{
    std::vector<double> side;
    for (int i = 0; i < 3 && !cover.empty(); ++i) {
        const Point2& from = triangle[i];
        const Point2 along = triangle[(i + 1) % 3] - from;
        side.clear();
        for (const Point2& p : cover)
            side.push_back(cross(along, p - from));
        cover = clipped(cover, side);
    }
    return cover;
}

/// On the integer grid about `centre`, counter-clockwise.
ClipperLib::Path path_of(std::span<const Point2> polygon, const Point2& centre)
{
    ClipperLib::Path path;
    for (const Point2& p : polygon)
        path.emplace_back(std::llround((p.x() - centre.x()) / polygon_grid_mm),
                          std::llround((p.y() - centre.y()) / polygon_grid_mm));
    if (!ClipperLib::Orientation(path))
        ClipperLib::ReversePath(path);
    return path;
}

double united_area(std::span<const ConvexPolygon> pieces, const Point2& centre)
{
    ClipperLib::Clipper clipper;
    for (const ConvexPolygon& piece : pieces)
        clipper.AddPath(path_of(piece, centre), ClipperLib::ptSubject, true);
    ClipperLib::Paths united;
    clipper.Execute(ClipperLib::ctUnion, united, ClipperLib::pftNonZero, ClipperLib::pftNonZero);
    double sum = 0;
    for (const ClipperLib::Path& path : united)
        sum += ClipperLib::Area(path); // holes come out negative
    return sum * polygon_grid_mm * polygon_grid_mm;
}

} // namespace

ConvexPolygon clipped(const ConvexPolygon& polygon, std::span<const double> side)
{
    ConvexPolygon kept;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const std::size_t next = (i + 1) % polygon.size();
        if (side[i] >= 0)
            kept.push_back(polygon[i]);
        if ((side[i] < 0) != (side[next] < 0) && side[i] != side[next]) {
            const double along = side[i] / (side[i] - side[next]);
            kept.push_back(polygon[i] + along * (polygon[next] - polygon[i]));
        }
    }
    return kept;
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
    for (const ConvexPolygon& cover : covers) {
        ConvexPolygon piece = inside(subject, cover);
        const double size = in_mm2(area_of(piece));
        if (size >= whole)
            return {};
        if (size > 0)
            pieces.push_back(std::move(piece));
    }
    if (pieces.empty())
        return square_millimetres(whole);
    const double covered =
        pieces.size() == 1 ? in_mm2(area_of(pieces.front())) : united_area(pieces, subject[0]);
    return square_millimetres(std::max(0.0, whole - covered));
}

} // namespace glim
