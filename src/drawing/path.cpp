#include "drawing/path.h"

#include "units/trig.h"

#include <cmath>

namespace glim {

namespace {

/// Requires: there are points.
Rect around(const Path& path)
{
    Point2 least = Point2::Constant(HUGE_VAL), most = -least;
    for (const Path::Line& line : path.lines())
        for (const Point2& p : line.points) {
            least = least.cwiseMin(p);
            most = most.cwiseMax(p);
        }
    return {least.x(), least.y(), most.x() - least.x(), most.y() - least.y()};
}

} // namespace

Path path_of(const Rect& r)
{
    return Path().add({{r.x, r.y}, {r.right(), r.y}, {r.right(), r.bottom()}, {r.x, r.bottom()}},
                      true);
}

Path circle_at(const Point2& centre, double radius)
{
    constexpr int corners = 72;
    std::vector<Point2> points;
    points.reserve(corners);
    for (int i = 0; i < corners; ++i) {
        const Angle a = degrees(360.0 * i / corners);
        points.emplace_back(centre + radius * Point2(cos(a), sin(a)));
    }
    return Path().add(std::move(points), true);
}

Path segment(const Point2& a, const Point2& b) { return Path().add({a, b}, false); }

Path parallels_over(const Path& path, double spacing, Angle slant)
{
    Path lines;
    if (path.empty())
        return lines;
    const Rect box = around(path);
    const double reach = std::hypot(box.width, box.height) / 2;
    const Point2 along(cos(slant), -sin(slant)), across(-along.y(), along.x());
    const double middle = across.dot(box.centre());
    const double last = std::floor((middle + reach) / spacing);
    for (double k = std::ceil((middle - reach) / spacing); k <= last; ++k) {
        const Point2 at = k * spacing * across + along.dot(box.centre()) * along;
        lines.add({at - reach * along, at + reach * along}, false);
    }
    return lines;
}

} // namespace glim
