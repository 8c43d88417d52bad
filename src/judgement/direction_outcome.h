#pragma once

#include "judgement/findings.h"

namespace glim {

/// A row's answer in one direction, by the best figures known there.
struct DirectionOutcome {
    Outcome outcome = Outcome::undecided;
    Because because = Because::of_the_figures;
    /// As in DirectionVerdict.
    Outcome at_worst = outcome, at_best = outcome;
    std::optional<bool> would_suffice = {};
};

/// `at` is a place in the look; the row looks in directions. With `hairline` as in Sampling.
///
/// Areas: met or not met only if the bounds and the meshes' accuracy leave no doubt. Obstacles:
/// what is hidden counts from `tolerated_at` on; as much again as the meshes may be off is
/// undecided. Light: where nothing is hidden, the file's own intensity decides; where something is,
/// the proof is due, unless the whole lamp's light is too little already or all of it is hidden.
/// `multiplier` is that of a table of light; the row asks for light only if the look has it.
DirectionOutcome outcome_at(const RuleRow& row, const LampLook& look, std::size_t at,
                            Length hairline, const Multiplier& multiplier = {});

/// Hidden area that counts as touching: the lit outline's length times the hairline.
Area tolerated_at(const LampLook& look, std::size_t at, Length hairline);

} // namespace glim
