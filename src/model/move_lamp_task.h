#pragma once

#include "model/lamp.h"

namespace glim {

/// Ways in which a lamp may be moved, each with a sense that holds on both sides of the vehicle.
enum class MoveWay {
    forward,  ///< mm, along the vehicle's forward axis
    outboard, ///< mm, away from the median plane
    up,       ///< mm
    turn,     ///< degrees about the vertical through the lamp's centre; + looks more outboard
    tilt,     ///< degrees about the horizontal across it; + looks more up
};
inline constexpr std::size_t move_way_count = 5;

/// Whether it turns; else it shifts.
constexpr bool turns(MoveWay way) { return way == MoveWay::turn || way == MoveWay::tilt; }

struct MoveWayWord {
    MoveWay way;
    std::string_view key;
    std::string_view unit; ///< "mm" or "deg"
};
inline constexpr std::array move_way_words = {
    MoveWayWord{MoveWay::forward, "forward", "mm"},
    MoveWayWord{MoveWay::outboard, "outboard", "mm"},
    MoveWayWord{MoveWay::up, "up", "mm"},
    MoveWayWord{MoveWay::turn, "turn", "deg"},
    MoveWayWord{MoveWay::tilt, "tilt", "deg"},
};
static_assert(move_way_words.size() == move_way_count);

/// Closed; least <= 0 <= most. In mm or degrees, as the way has it.
struct MoveLimits {
    double least = 0, most = 0;
};

/// A search for the least move of a lamp that makes checks be met: [move_lamp] of a study.
struct MoveLampTask {
    std::optional<LampId> lamp;      ///< else the first that the checks ask
    std::vector<std::size_t> checks; ///< places in Study::checks; empty: all
    /// One a way, in the order of MoveWay.
    std::array<MoveLimits, move_way_count> limits = {
        MoveLimits{-50, 50}, {-50, 50}, {-50, 50}, {-10, 10}, {-5, 5}};
    std::array<MoveWay, 2> map = {MoveWay::forward, MoveWay::outboard}; ///< across, up
};

} // namespace glim
