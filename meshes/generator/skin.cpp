#include "generator/skin.h"

#include "generator/body_net.h"

#include <Eigen/Geometry>
#include <Eigen/LU>

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace glim::demo {
namespace {

/// Spans: wide enough for a clean difference, narrow against any curve of the skin.
constexpr double difference_step = 1e-4;
/// Millimetres: well below the 0.001 mm that files are written with.
constexpr double close_enough = 1e-7;

/// 1 up to 0, 0 from 1 on, level at both ends to the second derivative.
double faded(double t)
{
    t = std::clamp(t, 0.0, 1.0);
    return 1 - t * t * t * (10 + t * (6 * t - 15));
}

Point2 solved(const std::function<Point2(const Point2&)>& seen, const Point2& wanted,
              const Point2& guess)
{
    Point2 uv = guess;
    for (int turn = 0; turn < 60; ++turn) {
        const Point2 off = wanted - seen(uv);
        if (off.norm() < close_enough)
            return uv;
        Eigen::Matrix2d slope;
        for (int axis = 0; axis < 2; ++axis) {
            const Point2 step = difference_step * Point2::Unit(axis);
            slope.col(axis) = (seen(uv + step) - seen(uv - step)) / (2 * difference_step);
        }
        Point2 move = slope.inverse() * off;
        // Half a span at most, lest a flat spot throws the search out of the net.
        if (move.norm() > 0.5)
            move *= 0.5 / move.norm();
        uv += move;
    }
    throw std::runtime_error("the skin does not reach the place that was asked for");
}

} // namespace

Push pushed_by(const Swelling& s)
{
    // 0 in the core, 1 at the border on that side.
    const auto off = [s](const Point2& uv, int axis) {
        const double t = uv[axis];
        return std::max((s.core_low[axis] - t) / (s.core_low[axis] - s.low[axis]),
                        (t - s.core_high[axis]) / (s.high[axis] - s.core_high[axis]));
    };
    return [s, off](const Point2& uv, const Point&) -> Vector {
        return faded(off(uv, 0)) * faded(off(uv, 1)) * s.push;
    };
}

Push pushed_by(const ArchFlare& flare)
{
    return [flare](const Point2&, const Point& p) -> Vector {
        // Only the side swells; the lamp's front face, further in, stays as it is.
        const double side = 1 - faded((p.y() - 740) / 90);
        const double off = std::hypot(p.x(), p.z() - axle_z) - arch_radius;
        return {0, side * flare.rise * faded(std::abs(off) / flare.reach), 0};
    };
}

Skin::Skin(CubicSurface base, std::vector<Push> pushes)
    : base_(std::move(base)), pushes_(std::move(pushes))
{
}

Point Skin::at(const Point2& uv) const
{
    const Point bare = base_.at(uv);
    Point p = bare;
    for (const Push& push : pushes_)
        p += push(uv, bare);
    return p;
}

Eigen::Matrix<double, 3, 2> Skin::slopes(const Point2& uv) const
{
    Eigen::Matrix<double, 3, 2> result;
    for (int axis = 0; axis < 2; ++axis) {
        const Point2 step = difference_step * Point2::Unit(axis);
        result.col(axis) = (at(uv + step) - at(uv - step)) / (2 * difference_step);
    }
    return result;
}

Vector Skin::normal(const Point2& uv) const
{
    const Eigen::Matrix<double, 3, 2> s = slopes(uv);
    return Vector(s.col(1)).cross(Vector(s.col(0))).normalized();
}

Point2 Skin::from_front(double w, double z, const Point2& guess) const
{
    const auto seen = [&](const Point2& uv) -> Point2 { return at(uv).tail<2>(); };
    return solved(seen, {w, z}, guess);
}

Point2 Skin::from_side(double x, double z, const Point2& guess) const
{
    const auto seen = [&](const Point2& uv) -> Point2 {
        const Point p = at(uv);
        return {p.x(), p.z()};
    };
    return solved(seen, {x, z}, guess);
}

} // namespace glim::demo
