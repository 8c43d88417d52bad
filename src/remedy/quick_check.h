#pragma once

#include "judgement/session.h"

namespace glim {

/// What a quick check says: the outcome of the worst of its checks, and by how much.
struct QuickAnswer {
    Outcome outcome = Outcome::undecided;
    double margin = 0; ///< LampVerdict::relative_margin of what decides, of the worst check
};

/// Checks asked over and over while something moves: every `step`, by rays alone, nothing between
/// the directions and nothing exactly. Areas count as they are sampled, less the meshes' accuracy.
/// Near a threshold it may say otherwise than a check, which has the last word.
QuickAnswer quick_check(const Session& session, std::span<const std::size_t> checks, Angle step,
                        const Workers& workers);

} // namespace glim
