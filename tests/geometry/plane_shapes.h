#pragma once

#include "geometry/polygons.h"
#include "units/trig.h"

#include <cstdint>

namespace glim::test {

/// Two triangles.
inline std::vector<PlaneTriangle> rectangle(double x0, double x1, double y0, double y1)
{
    const Point2 a(x0, y0), b(x1, y0), c(x1, y1), d(x0, y1);
    return {{a, b, c}, {a, c, d}};
}

/// Corners on a circle about the origin, the first at `turn` from the x axis.
inline std::vector<Point2> regular_polygon(int corners, double radius, Angle turn = {})
{
    std::vector<Point2> all;
    for (int i = 0; i < corners; ++i) {
        const Angle at = turn + degrees(360.0 * i / corners);
        all.emplace_back(radius * cos(at), radius * sin(at));
    }
    return all;
}

/// The same numbers on every machine, evenly in [0, 1).
class Numbers {
public:
    explicit Numbers(std::uint64_t seed) : state_(seed) {}
    double next()
    {
        state_ = state_ * 6364136223846793005U + 1442695040888963407U;
        return static_cast<double>(state_ >> 11) * 0x1p-53;
    }
    Point2 point(double size)
    {
        const double x = next();
        return {size * x, size * next()};
    }

private:
    std::uint64_t state_;
};

} // namespace glim::test
