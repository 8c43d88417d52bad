#include "shapes/made_light.h"

#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"
#include "units/trig.h"

namespace glim::shapes {

namespace {

Study lit(Study study, const MadeField& field)
{
    study.lights = {made_light(field)};
    study.sampling.step = degrees(5);
    return study;
}

} // namespace

MadeField lambert(double axis_cd)
{
    return [axis_cd](double h, double v) {
        return axis_cd * std::max(0.0, cos(degrees(h)) * cos(degrees(v)));
    };
}

LampLight made_light_within(int most_deg, const MadeField& field, LampId lamp)
{
    LampLight light;
    light.lamp = lamp;
    light.file = "made.ies";
    light.photometry.format = "LM-63-2002";
    light.photometry.absolute = true;
    IntensityGrid& grid = light.photometry.grid;
    grid.goniometer = Goniometer::a;
    for (int a = -most_deg; a <= most_deg; ++a) {
        grid.horizontal.push_back(degrees(a));
        grid.vertical.push_back(degrees(a));
    }
    // The file counts H to the right of one who looks out along the axis.
    const double outboard = plus_h_is_to_the_right(Side::left, ReferenceAxis::forward) ? 1 : -1;
    for (const Angle h : grid.horizontal)
        for (const Angle v : grid.vertical)
            grid.candela.push_back(candelas(field(outboard * in_degrees(h), in_degrees(v))));
    light.mounting = {.beam = BeamAxis::h0_v0, .roll = {}, .measured_on = Side::left};
    return light;
}

LampLight made_light(const MadeField& field, LampId lamp)
{
    return made_light_within(90, field, lamp);
}

Study lit_in_the_open(const MadeField& field)
{
    return lit(lamp_alone(plate(Point::Zero(), 60, 40)), field);
}

Study lit_behind_knife_edge(const MadeField& field)
{
    return lit(lamp_behind(plate(Point::Zero(), 60, 40), {wall(40, 50, 500, -300, 300)}), field);
}

} // namespace glim::shapes
