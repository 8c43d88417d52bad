#include "judgement/new_look.h"

#include "judgement/lamp_frame.h"
#include "judgement/shine.h"

namespace glim {

namespace {

/// The centroid of the facets, weighed by area.
Point area_centroid(const TriangleMesh& mesh)
{
    Point sum = Point::Zero();
    double weight = 0;
    for (std::size_t f = 0; f < mesh.facets.size(); ++f) {
        const double area = area_vector(mesh, f).norm();
        sum += area * (mesh.corner(f, 0) + mesh.corner(f, 1) + mesh.corner(f, 2)) / 3;
        weight += area;
    }
    return weight > 0 ? Point(sum / weight) : box_of(mesh).centre();
}

/// In the state that is asked; where the study does not know it, in the first that it knows.
const GroundState& ground_for(const Study& study, const std::string& state)
{
    const GroundState* ground = state.empty() ? nullptr : study.ground_in(state);
    return ground ? *ground : study.grounds.front();
}

std::string names_of(const Study& study, const std::vector<LampStanding>& lamps)
{
    std::string names;
    for (const LampStanding& l : lamps)
        names += (names.empty() ? "" : " + ") + study.lamps[l.lamp].name;
    return names;
}

Angle axis_turned(const Vehicle& vehicle, const Ground& ground, const LampLook& look)
{
    const LampFrame named =
        lamp_frame(vehicle, ground, look.side, axis_of(vehicle, look.side, look.axis), look.axis);
    return bearing_of(look.frame.forward, named).h;
}

} // namespace

Direction reference_axis(const Study& study, const LampStanding& standing, ReferenceAxis axis)
{
    const Lamp& lamp = study.lamps[standing.lamp];
    const Direction drawn = lamp.axis.value_or(axis_of(study.vehicle, lamp.side, axis));
    return standing.twin ? study.vehicle.across_median()(drawn) : drawn;
}

LampLook new_look(const Study& study, const PreparedScene& scene,
                  const std::vector<LampStanding>& lamps, ReferenceAxis axis,
                  const std::string& state)
{
    const LampStanding& first = lamps.front();
    const Lamp& lamp = study.lamps[first.lamp];
    const GroundState& ground = ground_for(study, state);
    LampLook look;
    look.name = names_of(study, lamps);
    look.standings = lamps;
    look.function = lamp.function;
    look.surface_basis = lamp.surface_basis;
    look.side = first.twin ? other(lamp.side) : lamp.side;
    look.twin = first.twin;
    look.twin_is_alike = lamp.paired && scene.is_symmetric();
    look.obstacles = first.obstacles;
    look.axis = axis;
    look.state = ground.state;
    look.state_stands_in = !state.empty() && state != ground.state;
    look.frame = lamp_frame(study.vehicle, ground.ground, look.side,
                            reference_axis(study, first, axis), axis);
    look.axis_turned = axis_turned(study.vehicle, ground.ground, look);
    look.centre_assumed = !lamp.centre;
    look.centre = !lamp.centre ? area_centroid(scene.lit_surface_of(first))
                  : first.twin ? study.vehicle.across_median()(*lamp.centre)
                               : *lamp.centre;
    look.axis_height = ground.ground.height_of(look.centre);
    for (const LampStanding& l : lamps)
        look.lit_face += area_of(scene.lit_surface_of(l));
    look.light = new_light(study, lamps);
    return look;
}

bool same_frame(const LampFrame& a, const LampFrame& b)
{
    return a.forward.vector() == b.forward.vector() && a.outboard.vector() == b.outboard.vector() &&
           a.up.vector() == b.up.vector();
}

bool same_view(const LampLook& a, const LampLook& b)
{
    return a.name == b.name && a.twin == b.twin && a.obstacles == b.obstacles &&
           a.state == b.state && a.state_stands_in == b.state_stands_in &&
           same_frame(a.frame, b.frame);
}

} // namespace glim
