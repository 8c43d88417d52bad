#pragma once

#include "judgement/quick_check.h"
#include "remedy/lamp_move.h"

namespace glim {

/// So near the least move along one way is brought.
inline constexpr double shift_accuracy_mm = 0.1;
inline constexpr double turn_accuracy_deg = 0.05;

/// How far a lamp has to go one way alone, in one sense, for the checks to be met.
struct WayAnswer {
    MoveWay way = MoveWay::forward;
    bool positive = true;
    std::optional<double> least; ///< mm or degrees, signed; none within the limits
    Length farthest;             ///< of the lit faces, where there is one
};

/// What passes over two ways together, the others at 0.
struct MoveMap {
    std::array<MoveWay, 2> ways = {}; ///< across, up
    std::vector<double> across, up;   ///< ascending; 0 is among them
    std::vector<QuickAnswer> answers; ///< by `up`, then `across`
};

struct MovedLampAnswer {
    LampId lamp;
    std::vector<std::size_t> checks; ///< places in the study's, all that are to be met
    bool met_as_drawn = false;       ///< then nothing else is looked for
    std::vector<WayAnswer> ways;     ///< those with room, by way, the positive sense first
    /// Of all moves looked at the one that moves the lit faces least.
    std::optional<LampMove> least;
    Length farthest; ///< of the lit faces, by that move
    /// The outcomes of the checks with the lamp moved so, at the study's own step.
    std::vector<Outcome> confirmed;
    Angle step;                      ///< how finely moves were looked at
    std::vector<SurfaceId> surfaces; ///< that move
    std::size_t tried = 0;           ///< moves looked at
};

/// Searches for moves of the task's lamp, within its limits, by which its checks are met. Passing
/// need not be monotone, since rules switch with height: each way is scanned from the lamp outward
/// and the first place that passes is refined. Throws Stopped.
MovedLampAnswer find_moved_lamp(const Study& study, const MoveLampTask& task,
                                const Workers& workers);

/// Throws Stopped.
MoveMap move_map(const Study& study, const MoveLampTask& task, const Workers& workers);

/// The study with the lamp moved; of trims by a curve or a box those go with it.
Study with_moved_lamp(const Study& study, const MovableLamp& lamp, const LampMove& move);

LampId lamp_of(const Study& study, const MoveLampTask& task);

} // namespace glim
