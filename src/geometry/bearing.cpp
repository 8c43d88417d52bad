#include "geometry/bearing.h"

#include "units/trig.h"

namespace glim {

Direction direction_of(const Bearing& b, const LampFrame& frame)
{
    const double level = cos(b.v);
    return Direction::along(level * cos(b.h) * frame.forward.vector() +
                            level * sin(b.h) * frame.outboard.vector() +
                            sin(b.v) * frame.up.vector());
}

Bearing bearing_of(const Direction& d, const LampFrame& frame)
{
    return {angle_of(d.dot(frame.outboard), d.dot(frame.forward)), arc_sine(d.dot(frame.up))};
}

} // namespace glim
