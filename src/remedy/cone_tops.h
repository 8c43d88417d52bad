#pragma once

#include "geometry/direction.h"

#include <limits>
#include <vector>

namespace glim {

/// Cones of one slope that stand on points of the plane across a push: the least field of that
/// slope that is nowhere below its tops. Distances are straight, over holes and from one part to
/// another, so that what lies behind each other moves together.
class ConeTops {
public:
    /// One height a point; points of -infinity have no cone. Requires: slope > 0.
    ConeTops(const std::vector<Point>& points, const Direction& push,
             const std::vector<double>& heights, double slope);

    /// -infinity where it would be less than `floor`, or where there are no cones.
    double at(const Point& p, double floor) const;

private:
    struct Top {
        Point2 at;
        double height;
    };
    struct Cell {
        std::vector<Top> tops;
        double highest = -std::numeric_limits<double>::infinity();
    };
    void look_into(long column, long row, const Point2& p, double& best) const;

    static constexpr long cells_across = 128;

    ViewPlane plane_;
    double slope_;
    Point2 least_ = Point2::Zero();
    double cell_ = 1; ///< side, mm
    double highest_ = -std::numeric_limits<double>::infinity();
    std::vector<Cell> cells_;
};

} // namespace glim
