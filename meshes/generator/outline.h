#pragma once

#include "geometry/vector.h"

#include <vector>

namespace glim::demo {

/// A closed line in a chart, counter-clockwise, without the first point again at the end.
using Outline = std::vector<Point2>;

struct Corner {
    Point2 at;
    double radius; ///< of the rounding; 0 keeps it sharp
};

/// Straight sides and rounded corners, with a point every `step` or closer. Requires: corners
/// counter-clockwise, convex, roundings that do not meet.
Outline rounded(const std::vector<Corner>& corners, double step);

/// A circle of `count` points.
Outline circle(const Point2& centre, double radius, int count);

/// A convex outline drawn in by `by` everywhere. Points keep their order and count.
Outline drawn_in(const Outline& outline, double by);

/// The part of a convex outline left of the line from `a` to `b`.
Outline cut(const Outline& outline, const Point2& a, const Point2& b);

/// The same line with further points, so that no side is longer than `step`.
Outline refined(const Outline& outline, double step);

/// Where the ray from `from`, inside, through `through` leaves the outline; in a star-shaped one
/// there is one such place. Throws std::runtime_error if there is none.
Point2 exit_point(const Outline& outline, const Point2& from, const Point2& through);

/// Whether a convex outline has the point inside.
bool holds(const Outline& outline, const Point2& p);

/// The middle of the outline's box.
Point2 middle(const Outline& outline);

} // namespace glim::demo
