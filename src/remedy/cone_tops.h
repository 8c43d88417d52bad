#pragma once

#include "geometry/direction.h"

#include <array>
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
    };
    /// A square of 2^level by 2^level cells.
    struct Block {
        int level;
        long column, row;
    };
    static std::size_t place(const Block& block)
    {
        return static_cast<std::size_t>((block.row << (levels - block.level)) + block.column);
    }
    double highest(const Block& block) const { return highest_of_[block.level][place(block)]; }
    /// No cone of the block is higher there.
    double bound(const Block& block, const Point2& p) const;
    void look_into(const Block& block, const Point2& p, double& best) const;
    void look_into(const Cell& cell, const Point2& p, double& best) const;

    static constexpr int levels = 7;
    static constexpr long cells_across = 1L << levels;

    ViewPlane plane_;
    double slope_;
    Point2 least_ = Point2::Zero();
    double cell_ = 1; ///< side, mm
    double highest_ = -std::numeric_limits<double>::infinity();
    std::vector<Cell> cells_;
    std::array<std::vector<double>, levels + 1> highest_of_; ///< by level, then row by row
};

} // namespace glim
