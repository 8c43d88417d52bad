#include "remedy/lamp_move.h"

#include "judgement/lamp_frame.h"
#include "model/lamp_unit.h"
#include "model/usual_axis.h"

#include <Eigen/Geometry>

#include <algorithm>

namespace glim {

namespace {

template <class Id>
bool has(const std::vector<Id>& list, Id id)
{
    return std::find(list.begin(), list.end(), id) != list.end();
}

/// Its axes over level ground: those that H and V of its checks are counted from.
LampFrame axes_of(const Study& study, const Lamp& lamp)
{
    const ReferenceAxis usual = usual_axis(lamp.function);
    return lamp_frame(study.vehicle, study.grounds.front().ground, lamp.side,
                      lamp.axis.value_or(axis_of(study.vehicle, lamp.side, usual)), usual);
}

} // namespace

LampMove operator*(double share, const LampMove& move)
{
    LampMove scaled = move;
    for (double& by : scaled.by)
        by *= share;
    return scaled;
}

LampMove operator+(const LampMove& a, const LampMove& b)
{
    LampMove sum = a;
    for (std::size_t i = 0; i < sum.by.size(); ++i)
        sum.by[i] += b.by[i];
    return sum;
}

MovableLamp::MovableLamp(const Study& study, LampId lamp)
    : lamp_(lamp), surfaces_(unit_of(study, lamp)), middle_(Point::Zero()),
      forward_(study.vehicle.forward.vector()),
      outboard_(study.vehicle.outboard(study.lamps[lamp].side).vector()),
      up_(study.vehicle.up.vector()), turn_axis_(Direction::z()), tilt_axis_(Direction::y())
{
    for (const LampId other : study.lamps.ids()) {
        const std::vector<SurfaceId>& emits = study.lamps[other].emits;
        if (std::any_of(emits.begin(), emits.end(), [&](SurfaceId s) { return has(surfaces_, s); }))
            lamps_.push_back(other);
    }
    Box box;
    for (const SurfaceId s : study.lamps[lamp].emits)
        for (const Point& p : study.surfaces[s].mesh.points) {
            lit_.push_back(p);
            box.add(p);
        }
    middle_ = box.centre();
    const LampFrame axes = axes_of(study, study.lamps[lamp]);
    turn_axis_ = Direction::along(axes.forward.vector().cross(axes.outboard.vector()));
    tilt_axis_ = Direction::along(axes.forward.vector().cross(axes.up.vector()));
}

Placement MovableLamp::placement(const LampMove& move) const
{
    const Vector shift = move[MoveWay::forward] * forward_ + move[MoveWay::outboard] * outboard_ +
                         move[MoveWay::up] * up_;
    return Placement::shift(shift) *
           Placement::turn(middle_, turn_axis_, degrees(move[MoveWay::turn])) *
           Placement::turn(middle_, tilt_axis_, degrees(move[MoveWay::tilt]));
}

void MovableLamp::place(Session& session, const LampMove& move) const
{
    const Placement where = placement(move);
    for (const LampId lamp : lamps_)
        session.place(lamp, where);
    for (const SurfaceId surface : surfaces_)
        session.place(surface, where);
}

Length MovableLamp::farthest(const LampMove& move) const
{
    const Placement where = placement(move);
    double most = 0;
    for (const Point& p : lit_)
        most = std::max(most, (where(p) - p).norm());
    return millimetres(most);
}

} // namespace glim
