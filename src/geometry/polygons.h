#pragma once

#include "geometry/vector.h"
#include "units/units.h"

#include <array>
#include <span>
#include <vector>

namespace glim {

/// The side of the integer grid on which pieces are united: 1 nm.
inline constexpr double polygon_grid_mm = 1e-6;

/// A convex polygon, counter-clockwise or clockwise, mm.
using ConvexPolygon = std::vector<Point2>;

/// A triangle in a plane, mm; it may wind either way, and be a line or a point.
using PlaneTriangle = std::array<Point2, 3>;

/// The part of a convex polygon on the side of a line where `side` >= 0; `side` gives the signed
/// distance of each corner, times any positive factor. Exact but for the rounding of the cut
/// points.
ConvexPolygon clipped(const ConvexPolygon& polygon, std::span<const double> side);

/// What two convex polygons have in common; fewer than three corners where that has no area.
/// `within` is counter-clockwise.
ConvexPolygon common_part(const ConvexPolygon& polygon, const ConvexPolygon& within);

/// The outer outlines of what the polygons cover together, counter-clockwise, made simpler and
/// grown outward, so that they hold all of it and reach no farther than twice `grown` beyond, but
/// for sharp corners; holes are filled. Polygons may wind either way, overlap and coincide; none
/// crosses itself. Corners are rounded to polygon_grid_mm.
std::vector<std::vector<Point2>> united_outlines(std::span<const std::vector<Point2>> polygons,
                                                 Length grown);

/// The area of a convex polygon; not negative, whichever way it winds.
Area area_of(const ConvexPolygon& polygon);

/// The part of `triangle` that none of `covers` covers. Covers may overlap, touch, coincide, stick
/// out. Exact but for rounding to polygon_grid_mm where several covers must be united: off by at
/// most about the length of all edges times the grid.
Area uncovered_area(const std::array<Point2, 3>& triangle, std::span<const ConvexPolygon> covers);

/// The same part, cut into triangles that are wound as `triangle` is and do not overlap. Corners
/// are rounded to polygon_grid_mm unless nothing is covered; what is thinner than that is gone.
std::vector<PlaneTriangle> uncovered_pieces(const PlaneTriangle& triangle,
                                            std::span<const ConvexPolygon> covers);

} // namespace glim
