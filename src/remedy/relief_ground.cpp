#include "remedy/relief_ground.h"

#include "machine/stop.h"

#include <algorithm>

namespace glim {

namespace {

bool same(const LampStanding& a, const LampStanding& b)
{
    return a.lamp == b.lamp && a.twin == b.twin && a.obstacles == b.obstacles;
}

} // namespace

ReliefGround::ReliefGround(const Study& study, const PreparedScene& scene)
    : study_(study), scene_(scene), origin_(scene.origin()), patches_(pushed_patches(study))
{
    for (std::size_t i = 0; i < patches_.size(); ++i) {
        standing_.push_back(standing_patch(patches_[i], i, false, study.vehicle, origin_));
        if (study.surfaces[patches_[i].surfaces.front()].mirror == MirrorRule::yes)
            standing_.push_back(standing_patch(patches_[i], i, true, study.vehicle, origin_));
    }
}

void ReliefGround::open_eyes(const Findings& findings, const Workers& workers)
{
    for (const LampLook& look : findings.looks)
        for (const LampStanding& lamp : look.standings) {
            throw_if_stopped(workers.stop);
            const bool open = std::any_of(eyes_.begin(), eyes_.end(),
                                          [&](const LampEye& eye) { return same(eye.lamp, lamp); });
            if (!open)
                eyes_.push_back(lamp_eye(study_, scene_, lamp, patches_, standing_));
        }
}

std::vector<std::size_t> ReliefGround::eyes_of(const LampLook& look) const
{
    std::vector<std::size_t> eyes;
    for (const LampStanding& lamp : look.standings)
        for (std::size_t i = 0; i < eyes_.size(); ++i)
            if (same(eyes_[i].lamp, lamp))
                eyes.push_back(i);
    return eyes;
}

} // namespace glim
