#pragma once

#include "generator/cubic_surface.h"

#include <functional>
#include <vector>

namespace glim::demo {

/// How far a point of the bare surface is moved, by its place in the chart and in space.
using Push = std::function<Vector(const Point2& uv, const Point& bare)>;

/// A faired swelling, or a relief where `push` points inward: nothing outside the chart's rectangle
/// from `low` to `high` and on its border, all of `push` from `core_low` to `core_high`, smooth to
/// the second derivative between, so that a panel that ends at the rectangle's border still meets
/// its neighbour.
struct Swelling {
    Point2 low;
    Point2 core_low;
    Point2 core_high;
    Point2 high;
    Vector push; ///< mm
};
Push pushed_by(const Swelling&);

/// The swelling around the wheel opening: outward by `rise` at the opening's edge, fading over
/// `reach` mm away from it.
struct ArchFlare {
    double rise;
    double reach;
};
Push pushed_by(const ArchFlare&);

/// The body's outer surface with whatever pushes it.
class Skin {
public:
    Skin(CubicSurface base, std::vector<Push> pushes);

    Point at(const Point2& uv) const;
    /// Unit, outward.
    Vector normal(const Point2& uv) const;
    /// Millimetres moved a unit of u (column 0) and of v (column 1).
    Eigen::Matrix<double, 3, 2> slopes(const Point2& uv) const;

    /// Where the skin stands at the given width and height, seen from the front.
    Point2 from_front(double w, double z, const Point2& guess) const;
    /// Where the skin stands at the given length and height, seen from the side.
    Point2 from_side(double x, double z, const Point2& guess) const;
    Point2 end() const { return base_.end(); }

private:
    CubicSurface base_;
    std::vector<Push> pushes_;
};

} // namespace glim::demo
