#pragma once

#include "drawing/field_grid.h"

namespace glim {

struct BearingLine {
    std::vector<Bearing> points;
    bool closed = false; ///< a closed line does not repeat its first point
};

/// Where a figure over a field's directions passes a level, by linear interpolation along the grid.
/// Where a cell's corners alternate, its mean tells which of them belong together.
struct LevelSet {
    std::vector<BearingLine> border; ///< within the field; each line has_length()
    /// Outlines of where the figure is below the level: counter-clockwise with H to the right and V
    /// up, holes clockwise.
    std::vector<BearingLine> below;
};

/// `figures` has one a node. `known`: places on grid lines at which the figure is known to pass the
/// level; used instead of the interpolated place where there is one between the same two nodes.
LevelSet level_set(const FieldGrid& grid, std::span<const double> figures, double level,
                   std::span<const Bearing> known = {});

/// Without repeated points and those in the middle of straight stretches along H or V. Of a line
/// that goes to and fro on one such stretch all points stay.
BearingLine straightened(const BearingLine& line);

/// Whether there is something to draw: where a figure only touches a level, a line may be a point.
inline bool has_length(const BearingLine& line)
{
    return line.points.size() >= (line.closed ? 3 : 2);
}

/// Around all cells of the grid.
std::vector<BearingLine> outline_of(const FieldGrid& grid);

} // namespace glim
