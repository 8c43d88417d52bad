#pragma once

#include "geometry/polygons.h"

#include <array>

namespace glim {

/// Hulls of more corners are made simpler before the least quadrilateral is sought, because the
/// work grows with the cube of the corners.
inline constexpr std::size_t most_exact_corners = 256;

/// A quadrilateral around a set of points, counter-clockwise.
struct EnclosingQuadrilateral {
    /// Convex. Three corners and the first again where nothing smaller than a triangle encloses;
    /// all on the line or place of the points where they have no area; the origin without points.
    std::array<Point2, 4> corners = {Point2::Zero(), Point2::Zero(), Point2::Zero(),
                                     Point2::Zero()};
    Area area;
    /// No quadrilateral around the points has less. Equal to `area`, but for rounding, for hulls of
    /// up to most_exact_corners corners. Beyond, `area` is that of the least quadrilateral around a
    /// simpler polygon outside the points, and this of the least around one inside: some tenths of
    /// a per mille apart where the outline is smooth.
    Area at_least;
};

/// The quadrilateral of least area around the points, which need be neither a rectangle nor unique;
/// of several equal ones always the same one is given.
///
/// Rests on a theorem (A. Aggarwal, J. S. Chang, C. K. Yap, "Minimum area circumscribing polygons",
/// The Visual Computer 1, 1985): among the least quadrilaterals around a convex polygon there is
/// one that has three sides along edges of the polygon, and the middle of the fourth touches it.
EnclosingQuadrilateral smallest_quadrilateral(std::span<const Point2> points);

} // namespace glim
