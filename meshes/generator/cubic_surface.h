#pragma once

#include "geometry/vector.h"

#include <vector>

namespace glim::demo {

/// A uniform cubic B-spline surface, clamped at all four sides: it starts and ends on the net's
/// border, touches nothing else, and is smooth to the second derivative. `u` runs over the columns,
/// 0 .. columns - 3, `v` over the rows, 0 .. rows - 3; one unit is one span. Outside these limits
/// the last span's polynomial goes on, which lets a trim curve overshoot the border.
class CubicSurface {
public:
    /// `net` is row after row. Requires: four columns and four rows or more, columns * rows points.
    CubicSurface(int columns, int rows, std::vector<Point> net);

    Point at(const Point2& uv) const;
    Point2 end() const { return {columns_ - 3.0, rows_ - 3.0}; }

private:
    int columns_;
    int rows_;
    std::vector<Point> net_;
};

} // namespace glim::demo
