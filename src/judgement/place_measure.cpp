#include "judgement/place_measure.h"

#include "judgement/lamp_frame.h"
#include "judgement/new_look.h"

#include <algorithm>

namespace glim {

namespace {

Side side_of(const Study& study, const LampStanding& lamp)
{
    const Side drawn = study.lamps[lamp.lamp].side;
    return lamp.twin ? other(drawn) : drawn;
}

std::vector<LampStanding> standings_of_functions(const Study& study,
                                                 const std::vector<LampFunction>& functions)
{
    std::vector<LampStanding> all;
    for (const LampId id : study.lamps.ids()) {
        const Lamp& lamp = study.lamps[id];
        if (std::find(functions.begin(), functions.end(), lamp.function) == functions.end())
            continue;
        all.push_back({id, false});
        if (lamp.paired)
            all.push_back({id, true});
    }
    return all;
}

} // namespace

StandingLamp standing_lamp(const Study& study, const PreparedScene& scene,
                           const LampStanding& standing, ReferenceAxis axis)
{
    return {standing, scene.lit_surface_of(standing), reference_axis(study, standing, axis)};
}

std::optional<LampStanding> partner_of(const Study& study, const LampStanding& lamp)
{
    if (study.lamps[lamp.lamp].paired)
        return LampStanding{lamp.lamp, !lamp.twin};
    for (const LampId id : study.lamps.ids())
        if (study.lamps[id].function == study.lamps[lamp.lamp].function &&
            study.lamps[id].side == other(side_of(study, lamp)) && id != lamp.lamp)
            return LampStanding{id, false};
    return std::nullopt;
}

std::optional<NearestLamp> nearest_lamp(const Study& study, const PreparedScene& scene,
                                        const StandingLamp& lamp, const GapToLamp& asked,
                                        ReferenceAxis axis)
{
    const auto measure = asked.from == GapFrom::edge ? edge_to_edge : centroid_to_edge;
    std::optional<NearestLamp> nearest;
    for (const LampStanding& s : standings_of_functions(study, asked.to)) {
        if (s.lamp == lamp.standing.lamp)
            continue;
        const StandingLamp to = standing_lamp(study, scene, s, axis);
        const auto gap = measure(lamp.lit, lamp.axis, to.lit, to.axis, study.vehicle);
        if (gap && (!nearest || gap->distance < nearest->gap.distance))
            nearest = NearestLamp{s.lamp, *gap};
    }
    return nearest;
}

} // namespace glim
