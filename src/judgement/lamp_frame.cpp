#include "judgement/lamp_frame.h"

namespace glim {

namespace {

Direction outboard_of(const Vehicle& vehicle, Side side)
{
    return side == Side::right ? -vehicle.left() : vehicle.left();
}

/// Towards the side that +H is counted to, before it is squared up with the axis.
Direction towards_positive_h(const Vehicle& vehicle, Side side, const Direction& axis)
{
    const Direction outboard = outboard_of(vehicle, side);
    // Within 45 degrees of outboard, "outboard of the axis" would point to the rear or nowhere.
    return std::abs(axis.dot(outboard)) > std::abs(axis.dot(vehicle.forward)) ? vehicle.forward
                                                                              : outboard;
}

} // namespace

LampFrame lamp_frame(const Vehicle& vehicle, const Ground& ground, Side side, const Direction& axis)
{
    const Vector& up = ground.up.vector();
    const Direction forward = Direction::along(axis.vector() - axis.dot(up) * up);
    const Direction across = Direction::along(up.cross(forward.vector()));
    const bool agrees = across.dot(towards_positive_h(vehicle, side, forward)) > 0;
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
    return outboard_of(vehicle, side);
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
