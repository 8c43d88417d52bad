#include "judgement/shine.h"

namespace glim {

std::optional<LookLight> new_light(const Study& study, const std::vector<LampStanding>& lamps)
{
    LookLight light;
    for (const LampStanding& lamp : lamps) {
        const LampLight* known = study.light_of(lamp.lamp);
        if (!known)
            return std::nullopt;
        if (light.files.empty()) {
            light.brightness = known->brightness.index();
            light.transmittance = known->transmittance;
        }
        light.files.push_back(known->file);
    }
    return light;
}

std::optional<Shining> shining(const Study& study, const LampStanding& lamp, ReferenceAxis axis)
{
    const LampLight* light = study.light_of(lamp.lamp);
    if (!light)
        return std::nullopt;
    return Shining{light, file_from_lamp(light->mounting, axis)};
}

void add_light(LightToward& sum, const Shining& lamp, const Bearing& toward, const SeenArea& seen)
{
    const std::optional<Intensity> filed =
        intensity_toward(lamp.light->photometry.grid, lamp.file_from_lamp, toward);
    if (!filed || !sum.whole) {
        sum.whole.reset();
        return;
    }
    const Intensity own = *filed * lamp.light->transmittance;
    *sum.whole += own;
    if (seen.weighed_approved > Area())
        sum.left += own * (seen.weighed_visible / seen.weighed_approved);
    else if (own > Intensity())
        sum.shows_no_surface = true;
}

} // namespace glim
