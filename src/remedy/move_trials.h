#pragma once

#include "remedy/moved_lamp.h"

#include <memory>

namespace glim {

/// Tries moves of a task's lamp: quickly while ways are scanned, with exact areas where they are
/// refined, by a check in the end.
class MoveTrials {
public:
    /// `study` outlives it.
    MoveTrials(const Study& study, const MoveLampTask& task, const Workers& workers);

    /// By rays on a coarse grid of directions. Throws Stopped, as all of these do.
    QuickAnswer quick(const LampMove& move);
    /// By a check at the study's own step, with the study's own rays.
    std::vector<Outcome> checked(const LampMove& move, OfFailures asked);

    /// The least share of `whole`, up to `most`, that passes quickly, scanned from 0 outward; to
    /// four times `accuracy`.
    std::optional<double> quick_share(const LampMove& whole, double most, double accuracy);
    /// Brought to `accuracy` from what the quick look says, either way; none beyond `most`.
    std::optional<double> refined(const LampMove& whole, double share, double most,
                                  double accuracy);
    /// Whether a move passes, as finely as ways are refined.
    bool passes(const LampMove& move);

    const MovableLamp& lamp() const { return lamp_; }
    const std::vector<std::size_t>& checks() const { return checks_; }
    Angle step() const; ///< of the grid on which ways are refined
    std::size_t tried() const { return tried_; }

private:
    bool passes_quickly(const LampMove& move) { return quick(move).outcome == Outcome::met; }
    QuickAnswer look(const LampMove& move, const QuickLook& how);

    const Study& study_;
    Workers workers_;
    std::vector<std::size_t> checks_;
    MovableLamp lamp_;
    Session scan_;
    std::unique_ptr<Session> exact_; ///< made when it is first asked
    std::size_t tried_ = 0;
};

} // namespace glim
