#include "model/vehicle.h"

namespace glim {

Direction Vehicle::left() const { return Direction::along(up.vector().cross(forward.vector())); }

Direction Vehicle::outboard(Side side) const { return side == Side::right ? -left() : left(); }

Placement Vehicle::across_median() const
{
    return Placement::mirror(in_mm(median) * left().vector(), left());
}

std::optional<OuterEdge> Vehicle::outer_edge() const
{
    if (extreme_outer_edge)
        return OuterEdge{*extreme_outer_edge, false};
    if (overall_width)
        return OuterEdge{*overall_width / 2, true};
    return std::nullopt;
}

Length Vehicle::lateral(const Point& p) const { return millimetres(left().dot(p)) - median; }

} // namespace glim
