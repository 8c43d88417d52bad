#pragma once

#include "geometry/vector.h"
#include "units/units.h"

#include <vector>

namespace glim {

/// A rectangle on a drawing, in points; x to the right, y down.
struct Rect {
    double x = 0, y = 0, width = 0, height = 0;

    double right() const { return x + width; }
    double bottom() const { return y + height; }
    Point2 centre() const { return {x + width / 2, y + height / 2}; }
};

/// Straight lines on a drawing, open or closed, any number of them.
///
///     Path().move_to({0, 0}).line_to({10, 0}).line_to({10, 5}).close()
class Path {
public:
    struct Line {
        std::vector<Point2> points;
        bool closed = false;
    };

    Path& move_to(const Point2& p)
    {
        lines_.push_back({{p}, false});
        return *this;
    }
    /// Requires: a line was begun.
    Path& line_to(const Point2& p)
    {
        lines_.back().points.push_back(p);
        return *this;
    }
    Path& close()
    {
        lines_.back().closed = true;
        return *this;
    }
    Path& add(std::vector<Point2> points, bool closed)
    {
        lines_.push_back({std::move(points), closed});
        return *this;
    }

    const std::vector<Line>& lines() const { return lines_; }
    bool empty() const { return lines_.empty(); }

private:
    std::vector<Line> lines_;
};

Path path_of(const Rect& rect);
/// A polygon of so many corners that no eye tells it from a circle.
Path circle_at(const Point2& centre, double radius);
/// From `a` to `b`.
Path segment(const Point2& a, const Point2& b);
/// Lines that cover all of the path, at this slant (rising to the right), so far apart across them.
/// They are counted from the origin, so that those of neighbouring regions meet.
Path parallels_over(const Path& path, double spacing, Angle slant);

} // namespace glim
