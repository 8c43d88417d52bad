#pragma once

#include "remedy/pushed_patch.h"

namespace glim {

/// What of the patches stands before one lamp and goes one way when it is pushed.
struct Pusher {
    Vector push = Vector::Zero(); ///< unit, as it stands
    std::vector<const StandingPatch*> patches;
};

/// A lamp ready to be looked at, what can be pushed apart from what cannot.
struct LampEye {
    LampStanding lamp;
    LampView view;
    std::vector<Standing> fixed_standings; ///< in the order of the caster's parts
    Caster fixed;                          ///< everything in the way that cannot be pushed
    std::vector<Pusher> pushers;           ///< may be empty
};

/// `standing` and `study` outlive the eye. Requires: the patches are the study's.
LampEye lamp_eye(const Study& study, const PreparedScene& scene, const LampStanding& lamp,
                 const std::vector<PushedPatch>& patches,
                 const std::vector<StandingPatch>& standing);

} // namespace glim
