#include "judgement/lamp_frame.h"

namespace glim {

LampFrame lamp_frame(const Vehicle& vehicle, const Ground& ground, Side side, const Direction& axis,
                     ReferenceAxis counted_from)
{
    const Vector& up = ground.up.vector();
    const Direction forward = Direction::along(axis.vector() - axis.dot(up) * up);
    const Direction across = Direction::along(up.cross(forward.vector()));
    const Direction positive_h =
        counted_from == ReferenceAxis::outboard ? vehicle.forward : vehicle.outboard(side);
    const bool agrees = across.dot(positive_h) > 0;
    return {forward, agrees ? across : -across, ground.up};
}

Direction axis_of(const Vehicle& vehicle, Side side, ReferenceAxis axis)
{
    switch (axis) {
    case ReferenceAxis::forward:
        return vehicle.forward;
    case ReferenceAxis::rearward:
        return -vehicle.forward;
    case ReferenceAxis::outboard:
        break;
    }
    return vehicle.outboard(side);
}

Side other(Side side)
{
    switch (side) {
    case Side::left:
        return Side::right;
    case Side::right:
        return Side::left;
    case Side::median:
        break;
    }
    return Side::median;
}

} // namespace glim
