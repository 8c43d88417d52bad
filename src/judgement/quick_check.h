#pragma once

#include "judgement/session.h"

namespace glim {

/// What one check says, quickly.
struct QuickMargin {
    Outcome outcome = Outcome::undecided;
    Area margin; ///< LampVerdict::margin of what decides; 0 where nothing does
};

/// What a quick check says: the outcome of the worst of its checks, and by how much.
struct QuickAnswer {
    Outcome outcome = Outcome::undecided;
    double margin = 0; ///< LampVerdict::relative_margin of what decides, of the worst check
};

struct QuickLook {
    Angle step = degrees(15); ///< corners of fields are looked at on any grid
    /// Whether the areas on which the verdicts hang are computed exactly, with the accuracy of the
    /// meshes that are in the way there.
    bool settled = false;
};

/// Checks asked over and over while something moves: by rays, nothing between the directions. Areas
/// count as they are sampled, less the meshes' accuracy. Near a threshold it may say otherwise than
/// a check, which has the last word.
QuickAnswer quick_check(const Session& session, std::span<const std::size_t> checks,
                        const QuickLook& how, const Workers& workers);

/// The same check by check.
std::vector<QuickMargin> quick_margins(const Session& session, std::span<const std::size_t> checks,
                                       const QuickLook& how, const Workers& workers);

/// How much is to be known where some check is not met.
enum class OfFailures {
    that_they_fail, ///< a check that is met on the grid of directions may fail between them
    every_outcome,
};

/// The outcomes that checks at the study's own step have, without anything that explains them.
/// Throws Stopped.
std::vector<Outcome> outcomes_of(const Session& session, std::span<const std::size_t> checks,
                                 OfFailures asked, const Workers& workers);

} // namespace glim
