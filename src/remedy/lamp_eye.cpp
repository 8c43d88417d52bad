#include "remedy/lamp_eye.h"

#include <algorithm>

namespace glim {

namespace {

/// Pushes nearer to each other than this lower the same line of sight alike.
constexpr double same_way = 1e-9;

bool holds(const std::vector<Standing>& list, SurfaceId surface, bool twin)
{
    return std::any_of(list.begin(), list.end(),
                       [&](const Standing& s) { return s.surface == surface && s.twin == twin; });
}

void add(std::vector<Pusher>& pushers, const StandingPatch& patch)
{
    auto found = std::find_if(pushers.begin(), pushers.end(), [&](const Pusher& p) {
        return (p.push - patch.push).norm() < same_way;
    });
    if (found == pushers.end()) {
        pushers.push_back({patch.push, {}});
        found = pushers.end() - 1;
    }
    found->patches.push_back(&patch);
}

} // namespace

LampEye lamp_eye(const Study& study, const PreparedScene& scene, const LampStanding& lamp,
                 const std::vector<PushedPatch>& patches,
                 const std::vector<StandingPatch>& standing)
{
    const std::vector<Standing> obstacles = scene.obstacles_of(lamp);
    std::vector<Standing> fixed;
    for (const Standing& s : obstacles)
        if (!study.surfaces[s.surface].reshape)
            fixed.push_back(s);
    Caster caster = scene.caster_of(fixed);
    LampEye eye{lamp, scene.view_of(lamp, study.sampling), std::move(fixed), std::move(caster), {}};
    for (const StandingPatch& patch : standing)
        if (holds(obstacles, patches[patch.patch].surfaces.front(), patch.twin))
            add(eye.pushers, patch);
    return eye;
}

} // namespace glim
