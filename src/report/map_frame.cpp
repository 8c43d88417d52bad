#include "report/map_frame.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// Wider than this, a plane map shows directions far from the axis much larger than they are.
constexpr Angle wide_h = degrees(120), far_h = degrees(90), far_v = degrees(60);

/// The points of a line from `a` on, `b` not among them, no further apart than `straight`.
void add_stretch(std::vector<Point2>& points, const MapFrame& frame, const Bearing& a,
                 const Bearing& b)
{
    const double apart =
        std::max(std::abs((b.h - a.h) / frame.straight), std::abs((b.v - a.v) / frame.straight));
    const int parts = std::max(1, static_cast<int>(std::ceil(apart)));
    for (int i = 0; i < parts; ++i)
        points.push_back(frame.point_of(
            {a.h + (b.h - a.h) * (double(i) / parts), a.v + (b.v - a.v) * (double(i) / parts)}));
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

} // namespace glim
