#pragma once

#include "judgement/see.h"

namespace glim {

/// What was found between the directions of a grid on all of which a row of area is met.
struct BetweenFound {
    std::vector<Bearing> open; ///< not surely met, the most doubtful ones, by V then H
    Angle finest_step;         ///< how finely it had to be looked at; the grid's own where nowhere
};

/// Looks where the grid has no directions. Every function throws Stopped where it was stopped.
class BetweenDirections {
public:
    /// All outlive it. With `finest`, `hairline` and `step` of the sampling.
    BetweenDirections(const Eyes& eyes, const Sampling& sampling, const Workers& workers);

    /// Looks between the grid's directions for every row of area that is met on all of them, adds
    /// what it finds to the plan and settles it.
    void refine(Plan& plan) const;
    /// Fills the crossings of every verdict but those of light.
    void add_crossings(Findings& findings) const;

    /// Where the outcome changes along the grid, brought together by halving until the two
    /// directions are no further apart than `finest`. On sampled areas; how far that may shift the
    /// place is in the uncertainty.
    std::vector<Crossing> crossings_of(const RuleRow& row, const LampVerdict& verdict,
                                       const LampLook& look) const;
    /// Looks between the directions wherever the area could fall to the threshold there: where the
    /// least at a grid cell's corners is within twice the largest change of it, halving down to
    /// `finest`. The change is that between the corners and to their neighbours, so that a dip
    /// which both sides of a cell show alike is found too; across half a cell it is taken as half.
    /// That is no proof: a dip of which no corner around shows anything stays unseen. Requires: a
    /// row of area.
    BetweenFound look_between(const RuleRow& row, const LampVerdict& verdict,
                              const LampLook& look) const;

private:
    void refine(Plan& plan, const RuleRow& row, Asked& asked) const;

    const Eyes& eyes_;
    const Sampling& sampling_;
    Workers workers_; ///< silent: this is a small part of the work
};

} // namespace glim
