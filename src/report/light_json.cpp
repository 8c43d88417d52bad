#include "report/light_json.h"

#include "words/keys.h"

namespace glim {

namespace {

Json cd_json(const std::optional<Intensity>& intensity)
{
    return intensity ? Json(in_candelas(*intensity)) : Json();
}

Json truth_json(const std::optional<bool>& truth) { return truth ? Json(*truth) : Json(); }

Json groups_json(const std::vector<GroupOfLight>& groups)
{
    Json::Array all;
    for (const GroupOfLight& g : groups)
        all.push_back(Json::Object{{"name", g.name},
                                   {"needed_cd", in_candelas(g.needed)},
                                   {"whole_cd", cd_json(g.whole)},
                                   {"left_cd", cd_json(g.left)},
                                   {"outcome", key_of(g.outcome)},
                                   {"would_suffice", truth_json(g.would_suffice)}});
    return all;
}

} // namespace

Json look_light_json(const LampLook& look)
{
    if (!look.light)
        return {};
    const LookLight& light = *look.light;
    Json::Array whole, left, no_surface;
    for (std::size_t at = 0; at < light.toward.size(); ++at) {
        whole.push_back(cd_json(light.toward[at].whole));
        left.push_back(cd_json(look.light_left(at)));
        no_surface.push_back(light.toward[at].shows_no_surface);
    }
    return Json::Object{{"files", Json::Array(light.files.begin(), light.files.end())},
                        {"brightness", brightness_words[light.brightness].key},
                        {"transmittance", light.transmittance},
                        {"whole_cd", std::move(whole)},
                        {"left_cd", std::move(left)},
                        {"shows_no_surface", std::move(no_surface)}};
}

Json verdict_light_json(const LampVerdict& verdict)
{
    if (!verdict.light)
        return {};
    const LightFigures& light = *verdict.light;
    Json::Array would_suffice;
    for (const DirectionVerdict& d : verdict.directions)
        would_suffice.push_back(truth_json(d.would_suffice));
    return Json::Object{{"multiplier_least", light.multiplier.least},
                        {"multiplier_most", light.multiplier.most},
                        {"needed_cd", in_candelas(light.needed)},
                        {"whole_cd", cd_json(light.whole)},
                        {"left_cd", cd_json(light.left)},
                        {"groups", groups_json(light.groups)},
                        {"worst_group", light.worst_group ? Json(*light.worst_group) : Json()},
                        {"would_suffice", std::move(would_suffice)}};
}

Json estimate_json(const LampVerdict& verdict)
{
    if (!verdict.estimate)
        return {};
    return Json::Object{{"suffices", truth_json(verdict.estimate->suffices)},
                        {"because", key_of(verdict.estimate->because)},
                        {"row", verdict.estimate->row}};
}

} // namespace glim
