#include "model/vehicle.h"

namespace glim {

Direction Vehicle::left() const { return Direction::along(up.vector().cross(forward.vector())); }

Direction Vehicle::outboard(Side side) const { return side == Side::right ? -left() : left(); }

Placement Vehicle::across_median() const
{
    return Placement::mirror(in_mm(median) * left().vector(), left());
}

Length Vehicle::lateral(const Point& p) const { return millimetres(left().dot(p)) - median; }

} // namespace glim
