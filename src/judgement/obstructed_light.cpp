#include "judgement/obstructed_light.h"

#include "judgement/shine.h"
#include "machine/stop.h"
#include "units/trig.h"
#include "visibility/sweep.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// Multiples of the step on both sides of 0, 90 degrees themselves included.
std::vector<Angle> angles_around(Angle step)
{
    constexpr double most = 90;
    std::vector<Angle> angles;
    for (double i = std::ceil(-most / in_degrees(step)); i * in_degrees(step) <= most; ++i)
        angles.push_back(step * i);
    return angles;
}

/// One lamp and its file, asked by V and by H to the right as type a counts it.
class LampToRight {
public:
    LampToRight(const Session& session, const LampLook& look, const Shining& shining)
        : look_(look), shining_(shining),
          view_(session.scene().view_of(look.standings.front(), session.study().sampling)),
          outboard_(plus_h_is_to_the_right(look.side, look.axis) ? 1 : -1)
    {
    }

    Bearing bearing(Angle right, Angle v) const { return {right * outboard_, v}; }

    bool is_measured(Angle right, Angle v) const
    {
        return intensity_toward(shining_.light->photometry.grid, shining_.file_from_lamp,
                                bearing(right, v))
            .has_value();
    }

    Intensity left(Angle right, Angle v) const
    {
        const Bearing toward = bearing(right, v);
        LightToward light{.whole = Intensity(), .left = {}};
        add_light(light, shining_, toward, seen_toward(view_, direction_of(toward, look_.frame)));
        return light.left;
    }

private:
    const LampLook& look_;
    const Shining& shining_;
    LampView view_;
    double outboard_;
};

} // namespace

std::optional<ObstructedLight> obstructed_light(const Session& session, const LampLook& look,
                                                Angle step, const Workers& workers)
{
    const std::optional<Shining> known =
        shining(session.study(), look.standings.front(), look.axis);
    if (!known || look.standings.size() != 1)
        return std::nullopt;
    const LampToRight lamp(session, look, *known);
    ObstructedLight result{look.name, look.twin, {}, look.light->files, look.light->brightness};
    IntensityGrid& grid = result.grid;
    grid.goniometer = Goniometer::a;
    for (const Angle h : angles_around(step))
        if (lamp.is_measured(h, Angle()))
            grid.horizontal.push_back(h);
    for (const Angle v : angles_around(step))
        if (std::all_of(grid.horizontal.begin(), grid.horizontal.end(),
                        [&](Angle h) { return lamp.is_measured(h, v); }))
            grid.vertical.push_back(v);
    grid.candela.resize(grid.horizontal.size() * grid.vertical.size());
    const std::size_t rows = grid.vertical.size();
    if (!for_each_index(grid.candela.size(), workers, [&](std::size_t i, unsigned) {
            grid.candela[i] = lamp.left(grid.horizontal[i / rows], grid.vertical[i % rows]);
        }))
        throw Stopped();
    return result;
}

} // namespace glim
