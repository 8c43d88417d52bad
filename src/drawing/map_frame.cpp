#include "drawing/map_frame.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// Wider than this, a plane map shows directions far from the axis much larger than they are.
constexpr Angle wide_h = degrees(120), far_h = degrees(90), far_v = degrees(60);

/// Coarse enough that a turn round the lamp does not end where it began, then as fine as needed.
constexpr Angle first_parts = degrees(15);
constexpr double near_enough = 3; ///< points on the drawing
constexpr int most_halvings = 18;

Bearing between(const Bearing& a, const Bearing& b, double share)
{
    return {a.h + (b.h - a.h) * share, a.v + (b.v - a.v) * share};
}

/// The points of a line from `a` on, that of `b` not among them.
void add_halved(std::vector<Point2>& points, const MapFrame& frame, const Bearing& a,
                const Bearing& b, int halvings)
{
    const Point2 from = frame.point_of(a);
    if (halvings == 0 || (frame.point_of(b) - from).norm() < near_enough) {
        points.push_back(from);
        return;
    }
    const Bearing half = between(a, b, 0.5);
    add_halved(points, frame, a, half, halvings - 1);
    add_halved(points, frame, half, b, halvings - 1);
}

void add_stretch(std::vector<Point2>& points, const MapFrame& frame, const Bearing& a,
                 const Bearing& b)
{
    if (!frame.curved) {
        points.push_back(frame.point_of(a));
        return;
    }
    const double apart =
        std::max(std::abs((b.h - a.h) / first_parts), std::abs((b.v - a.v) / first_parts));
    const int parts = std::max(1, static_cast<int>(std::ceil(apart)));
    for (int i = 0; i < parts; ++i)
        add_halved(points, frame, between(a, b, double(i) / parts),
                   between(a, b, double(i + 1) / parts), most_halvings);
}

bool is_behind(const Bearing& b) { return b.h == degrees(180) || b.h == degrees(-180); }

/// Cut open at the seam behind the lamp: what is left are open lines.
std::vector<BearingLine> cut_behind(const BearingLine& line)
{
    std::vector<BearingLine> parts;
    const std::size_t n = line.points.size();
    for (std::size_t i = 0; i + (line.closed ? 0 : 1) < n; ++i) {
        const Bearing &a = line.points[i], &b = line.points[(i + 1) % n];
        if (is_behind(a) && is_behind(b) && a.h == b.h)
            continue;
        if (parts.empty() || parts.back().points.back() != a)
            parts.push_back({{a}, false});
        parts.back().points.push_back(b);
    }
    return parts;
}

} // namespace

FieldRectangle around(const Field& field)
{
    FieldRectangle all = field.rectangles.front();
    for (const FieldRectangle& r : field.rectangles) {
        all.h_least = std::min(all.h_least, r.h_least);
        all.h_most = std::max(all.h_most, r.h_most);
        all.v_least = std::min(all.v_least, r.v_least);
        all.v_most = std::max(all.v_most, r.v_most);
    }
    return all;
}

bool is_wide(const Field& field)
{
    const FieldRectangle r = around(field);
    return r.h_most - r.h_least > wide_h || std::max(r.h_most, -r.h_least) > far_h ||
           std::max(r.v_most, -r.v_least) > far_v;
}

Path path_on(const MapFrame& frame, std::span<const BearingLine> lines)
{
    Path path;
    for (const BearingLine& line : lines) {
        if (!has_length(line))
            continue;
        std::vector<Point2> points;
        for (std::size_t i = 0; i + 1 < line.points.size(); ++i)
            add_stretch(points, frame, line.points[i], line.points[i + 1]);
        if (line.closed)
            add_stretch(points, frame, line.points.back(), line.points.front());
        else
            points.push_back(frame.point_of(line.points.back()));
        path.add(std::move(points), line.closed);
    }
    return path;
}

Path rim_on(const MapFrame& frame, std::span<const BearingLine> lines)
{
    if (!frame.joins_behind)
        return path_on(frame, lines);
    std::vector<BearingLine> parts;
    for (const BearingLine& line : lines)
        for (BearingLine& part : cut_behind(line))
            parts.push_back(std::move(part));
    return path_on(frame, parts);
}

} // namespace glim
