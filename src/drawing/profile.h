#pragma once

#include "drawing/chart_subject.h"

namespace glim {

/// One node on a line of the grid. Figures in mm2 or cd, as the subject's.
struct ProfilePoint {
    Angle along;
    double figure = 0;
    double likely_error = 0; ///< of the computing: an estimate, or the rounding of an exact figure
    /// Between these the figure lies for certain; none where that was not proved.
    std::optional<std::pair<double, double>> proved;
    double mesh_error = 0;            ///< and so much beside them the surfaces may have it
    double threshold = 0;             ///< what is asked, or allowed to be hidden
    std::optional<double> whole = {}; ///< of light that is left: with nothing in the way
    Outcome outcome = Outcome::undecided;
};

/// Where one outcome other than "met" holds.
struct Span {
    Outcome outcome = Outcome::undecided;
    Angle from, to;
};

/// A figure along a line of constant V, or of constant H.
struct Profile {
    bool along_h = true;
    Angle at; ///< the V, or the H, that stays
    /// Neighbours with nothing but field between them; a notch or a gap begins another.
    std::vector<std::vector<ProfilePoint>> stretches;
    std::vector<Span> not_met;
    bool holds_worst = false;

    bool empty() const { return stretches.empty(); }
    Angle first() const { return stretches.front().front().along; }
    Angle last() const { return stretches.back().back().along; }
};

/// Along the grid's line nearest to `at`. `look` is the subject's.
Profile profile_along_h(const ChartSubject& subject, const LampLook& look, Angle v);
Profile profile_along_v(const ChartSubject& subject, const LampLook& look, Angle h);

} // namespace glim
