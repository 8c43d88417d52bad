#include "generator/outline.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>

namespace glim::demo {
namespace {

double cross(const Point2& a, const Point2& b) { return a.x() * b.y() - a.y() * b.x(); }

const Point2& next(const Outline& outline, std::size_t i)
{
    return outline[(i + 1) % outline.size()];
}

const Point2& previous(const Outline& outline, std::size_t i)
{
    return outline[(i + outline.size() - 1) % outline.size()];
}

Point2 normalised(const Point2& v) { return v / v.norm(); }

void add_rounding(Outline& outline, const Point2& before, const Corner& corner, const Point2& after,
                  double step)
{
    const Point2 in = normalised(corner.at - before);
    const Point2 out = normalised(after - corner.at);
    const double turn = std::atan2(cross(in, out), in.dot(out));
    if (corner.radius <= 0) {
        outline.push_back(corner.at);
        return;
    }
    const Point2 start = corner.at - corner.radius * std::tan(turn / 2) * in;
    const Point2 left(-in.y(), in.x());
    // Six at least: a rounding of few millimetres should still look round.
    const int count = std::max(6, static_cast<int>(std::ceil(corner.radius * turn / step)));
    for (int k = 0; k <= count; ++k) {
        const double a = turn * k / count;
        outline.push_back(start + corner.radius * (std::sin(a) * in + (1 - std::cos(a)) * left));
    }
}

} // namespace

Outline rounded(const std::vector<Corner>& corners, double step)
{
    Outline outline;
    const std::size_t n = corners.size();
    for (std::size_t i = 0; i < n; ++i)
        add_rounding(outline, corners[(i + n - 1) % n].at, corners[i], corners[(i + 1) % n].at,
                     step);
    return refined(outline, step);
}

Outline circle(const Point2& centre, double radius, int count)
{
    Outline outline;
    for (int k = 0; k < count; ++k) {
        const double a = 2 * std::numbers::pi * k / count;
        outline.push_back(centre + radius * Point2(std::cos(a), std::sin(a)));
    }
    return outline;
}

Outline drawn_in(const Outline& outline, double by)
{
    Outline result;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point2 in = normalised(outline[i] - previous(outline, i));
        const Point2 out = normalised(next(outline, i) - outline[i]);
        const Point2 along = normalised(in + out);
        // A mitre: further at a corner, so that both sides come in by the same amount.
        result.push_back(outline[i] + by / along.dot(in) * Point2(-along.y(), along.x()));
    }
    return result;
}

Outline cut(const Outline& outline, const Point2& a, const Point2& b)
{
    const auto side = [&](const Point2& p) { return cross(b - a, p - a); };
    Outline kept;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const double here = side(outline[i]);
        const double there = side(next(outline, i));
        if (here >= 0)
            kept.push_back(outline[i]);
        if ((here > 0 && there < 0) || (here < 0 && there > 0))
            kept.push_back(outline[i] + here / (here - there) * (next(outline, i) - outline[i]));
    }
    return kept;
}

Outline refined(const Outline& outline, double step)
{
    Outline result;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point2 side = next(outline, i) - outline[i];
        const int pieces = std::max(1, static_cast<int>(std::ceil(side.norm() / step)));
        for (int k = 0; k < pieces; ++k)
            result.push_back(outline[i] + side * k / pieces);
    }
    return result;
}

Point2 exit_point(const Outline& outline, const Point2& from, const Point2& through)
{
    // A ray through a corner may be called just beside both of its sides.
    constexpr double slack = 1e-9;
    const Point2 ray = through - from;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point2 side = next(outline, i) - outline[i];
        const double turn = cross(ray, side);
        if (turn <= 0)
            continue;
        const Point2 to = outline[i] - from;
        const double along_side = cross(to, ray) / turn;
        const double along_ray = cross(to, side) / turn;
        if (along_side >= -slack && along_side <= 1 + slack && along_ray > 0)
            return from + along_ray * ray;
    }
    throw std::runtime_error("an outline is not star-shaped from its middle");
}

bool holds(const Outline& outline, const Point2& p)
{
    for (std::size_t i = 0; i < outline.size(); ++i)
        if (cross(next(outline, i) - outline[i], p - outline[i]) <= 0)
            return false;
    return true;
}

Point2 middle(const Outline& outline)
{
    Point2 least = outline.front();
    Point2 most = least;
    for (const Point2& p : outline) {
        least = least.cwiseMin(p);
        most = most.cwiseMax(p);
    }
    return (least + most) / 2;
}

} // namespace glim::demo
