#pragma once

#include "geometry/bearing.h"
#include "judgement/build_factors.h"
#include "judgement/findings.h"
#include "units/units.h"

#include <optional>
#include <string>
#include <vector>

namespace glim {

// What builds within tolerances show, as plain values: what words, drawing and report say of it.

/// Of builds, counted. The interval is Wilson's (E. B. Wilson, J. Am. Stat. Assoc. 22, 1927) for
/// 95 %, as if builds were drawn independently of each other; they fill the tolerances more evenly
/// than that, so it is rather too wide.
struct ShareOfBuilds {
    std::size_t met = 0, builds = 0;
    double share = 0, low = 0, high = 1;
};

/// A figure with the interval in which it lies with 95 % confidence.
struct Estimate {
    double value = 0, low = 0, high = 0;
};

/// Counts in bins of equal width, from `least` on.
struct Histogram {
    double least = 0, width = 0;
    std::vector<std::size_t> counts;

    double most() const { return least + width * static_cast<double>(counts.size()); }
};

/// How a followed figure spreads over the builds.
struct FigureSpread {
    double mean = 0, standard_deviation = 0, least = 0, most = 0;
    double one_percent = 0, median = 0, ninety_nine_percent = 0; ///< so much of builds lies below
    Histogram histogram;
};

/// A direction that decided in some builds: where the figure was worst.
struct DecidingDirection {
    Bearing toward;
    std::size_t builds = 0;
};

/// Of whom a share of the variance is told.
enum class ContributorKind { way, tolerance, part, installation };
struct Contributor {
    ContributorKind kind = ContributorKind::way;
    std::size_t tolerance = 0; ///< of a way or a tolerance: place among the study's
    ToleranceWay way = ToleranceWay::forward;
    std::vector<std::size_t> factors; ///< places in ToleranceFindings::factors
};

/// What a contributor has to do with the variance of a figure (I. M. Sobol', Math. Model. Comput.
/// Exp. 1, 1993): by itself, and together with others. Estimated after A. Saltelli et al., Comput.
/// Phys. Commun. 181, 2010 and M. J. W. Jansen, Comput. Phys. Commun. 117, 1999; the intervals come
/// from the spread between sixteen independent shifts of the sequence of builds. Estimates may lie
/// a little below 0 or above 1.
struct VarianceShare {
    Estimate first; ///< what would vanish of the variance if it alone were held
    Estimate total; ///< what would remain if all others were
};

/// Deviations that together are worst, each at one of its limits.
struct StackUp {
    std::vector<double> deviations; ///< one a factor; mm or degrees
    double figure = 0;              ///< of the followed verdict
    Bearing toward;                 ///< where it is worst
    Outcome outcome = Outcome::undecided;
    bool every_corner = false; ///< looked at; else a search that takes the best step each time
    std::size_t looked_at = 0;
};

/// One lamp (or those of a side together) under one row, over all builds.
struct ToleratedVerdict {
    std::size_t check = 0; ///< place in ToleranceFindings::checks
    std::string row;       ///< id
    std::size_t look = 0;  ///< place in the looks of `as_drawn`
    std::string lamp;      ///< name of the look
    bool twin = false, together = false;
    bool of_area = true;   ///< the figure is the least visible area; else the largest hidden one
    double needed_mm2 = 0; ///< rows of area
    double as_drawn_mm2 = 0;
    Bearing worst_as_drawn;
    ShareOfBuilds share;
    FigureSpread spread;                      ///< mm2
    std::vector<DecidingDirection> deciding;  ///< most builds first
    std::vector<VarianceShare> contributions; ///< one a contributor; empty: nothing varies
    std::optional<StackUp> worst;
};

struct OutcomeCount {
    Outcome outcome = Outcome::undecided;
    std::size_t builds = 0;
};

struct ToleratedCheck {
    std::string name;
    Outcome as_drawn = Outcome::undecided; ///< by the same means as the builds
    ShareOfBuilds share;
    std::vector<OutcomeCount> outcomes;       ///< those that come up, from worst to best
    std::optional<std::size_t> deciding = {}; ///< place in `verdicts` of what decides as drawn
    bool depends_on_others = false;           ///< rows of light or place are in it: taken as drawn
};

/// How large one tolerance may be for a wanted share of builds to meet every check.
struct NeededTolerance {
    std::size_t tolerance = 0; ///< place among the study's
    double wanted = 0;         ///< share
    /// Of its figures as the study has them; none where even without it too few builds meet.
    std::optional<double> factor;
    bool at_least = false; ///< that factor is the largest that was tried
    ShareOfBuilds there;   ///< with that factor; where none, without the tolerance
    std::size_t builds = 0;
};

/// Looked at afterwards over the whole field, whether other directions decide.
struct DirectionProof {
    std::size_t builds = 0, others_decide = 0, other_outcome = 0;
    Area most_worse; ///< by so much another direction was worse at most
};

struct ToleranceFindings {
    /// As drawn, by the same means as the builds, with the rows' figures and where they come from;
    /// looked at in the directions that the field had at the task's step.
    Findings as_drawn;
    std::vector<BuildFactor> factors;
    std::vector<Contributor> contributors;
    std::vector<ToleratedCheck> checks;
    std::vector<ToleratedVerdict> verdicts;
    ShareOfBuilds all_checks; ///< meet every check
    std::size_t builds = 0, builds_for_contributions = 0;
    std::size_t directions = 0; ///< most of one lamp
    bool whole_field = false;
    std::optional<DirectionProof> direction_proof;
    std::optional<NeededTolerance> needed;
    Length profile_step;  ///< widest; 0: no profile tolerance
    bool partial = false; ///< stopped before all was done
};

} // namespace glim
