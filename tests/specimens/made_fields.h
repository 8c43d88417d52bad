#pragma once

#include "drawing/level_set.h"
#include "geometry/direction_grid.h"

#include <functional>

namespace glim::test {

/// Degrees.
FieldRectangle rectangle(double h0, double h1, double v0, double v1);

/// A field with a figure known on paper, looked at every `step` degrees.
class FigureOnGrid {
public:
    using Figure = std::function<double(double h_deg, double v_deg)>;
    FigureOnGrid(const Field& field, double step, const Figure& figure);

    const FieldGrid& grid() const { return grid_; }
    const std::vector<double>& figures() const { return figures_; }

private:
    std::vector<Bearing> nodes_;
    FieldGrid grid_;
    std::vector<double> figures_;
};

/// Of closed lines, holes taken off; degrees squared.
double area_of(const std::vector<BearingLine>& lines);

} // namespace glim::test
