#include "specimens/made_fields.h"

namespace glim::test {

FieldRectangle rectangle(double h0, double h1, double v0, double v1)
{
    return {degrees(h0), degrees(h1), degrees(v0), degrees(v1)};
}

FigureOnGrid::FigureOnGrid(const Field& field, double step, const Figure& figure)
    : nodes_(grid_of(field, degrees(step)).nodes), grid_(nodes_, field)
{
    for (const Bearing& b : nodes_)
        figures_.push_back(figure(in_degrees(b.h), in_degrees(b.v)));
}

double area_of(const std::vector<BearingLine>& lines)
{
    double twice = 0;
    for (const BearingLine& line : lines)
        for (std::size_t i = 0; i < line.points.size(); ++i) {
            const Bearing& a = line.points[i];
            const Bearing& b = line.points[(i + 1) % line.points.size()];
            twice += in_degrees(a.h) * in_degrees(b.v) - in_degrees(b.h) * in_degrees(a.v);
        }
    return twice / 2;
}

} // namespace glim::test
