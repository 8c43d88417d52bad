#pragma once

#include "judgement/findings.h"
#include "machine/workers.h"

namespace glim {

// What becomes of the checks where the vehicle stands otherwise, or a part of it is moved.

/// A fixed position of a moved part: places in Study::moved_parts and in its positions.
struct MovedTo {
    std::size_t part = 0, position = 0;
};

/// Under what a check was looked at.
struct Situation {
    std::size_t check = 0; ///< place in Study::checks
    /// The ground that every row takes; empty: each row that of its own state.
    std::string state = {};
    std::optional<MovedTo> moved = {};
    /// Whether regulations ask it so: each row in its own state, and with parts moved the rows that
    /// speak of moved parts. All else is information.
    bool is_verdict = false;

    /// Whether it is a row of moved parts that is asked, with one moved.
    bool judges_moved_part() const { return is_verdict && moved; }
};

/// One entry of `found.checks` a situation. Where the situation is a verdict with a part moved, the
/// entry is that of a row of moved parts, asked of those of the check's lamps that it speaks of.
/// Nothing is explained: no blockers, no ranges that are not covered, no crossings.
struct SituationFindings {
    Findings found;
    std::vector<Situation> situations;

    const CheckFindings& at(std::size_t situation) const { return found.checks[situation]; }
};

/// Every check as rules have it, in every other state whose ground the study gives, and in each
/// fixed position of each moved part; with these also the rows of the checks' tables that hold in
/// such positions. In the order of these, then of the checks. A check whose rows all take the
/// ground in a state anyway is not repeated for it, and a row of moved parts is asked once of a
/// lamp. Throws InputError as check_study does, Stopped.
SituationFindings find_situations(const Study& study, Angle step, const Workers& workers);

/// The study with that part in that position: its surfaces moved, and those that were ignored
/// opaque.
Study in_position(const Study& study, const MovedTo& moved);

} // namespace glim
