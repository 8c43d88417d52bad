#pragma once

#include "geometry/vector.h"

#include <array>
#include <span>

namespace glim {

/// A point, segment or triangle of an obstacle, or what cuts left of it, as the eye has it: places
/// in the view plane, each with its height across the plane of one lit facet. Convex.
class ViewPiece {
public:
    void add(const Point2& at, double height);
    bool empty() const { return count_ == 0; }
    std::span<const Point2> places() const { return std::span(at_).first(count_); }

    /// What lies no lower than `height`, what no higher: closed, exact but for rounding.
    ViewPiece from(double height) const { return cut(height, 1); }
    ViewPiece up_to(double height) const { return cut(height, -1); }

private:
    ViewPiece cut(double height, double sign) const;

    // A triangle cut twice has five corners; a segment, run there and back, up to four.
    std::array<Point2, 6> at_;
    std::array<double, 6> height_{};
    std::size_t count_ = 0;
};

/// Whether two convex polygons of the view plane (segments and points too) come nearer to each
/// other than `margin`; with a negative one, overlap by more than it everywhere. Two pieces that
/// pass each other corner to corner may be called near up to a few margins away.
bool come_near(std::span<const Point2> a, std::span<const Point2> b, double margin);

} // namespace glim
