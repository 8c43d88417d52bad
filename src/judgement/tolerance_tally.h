#pragma once

#include "judgement/build_runs.h"
#include "judgement/outcome_book.h"
#include "judgement/tolerance_findings.h"

namespace glim {

/// Counts builds.
class ToleranceTally {
public:
    /// `drawn`: what is seen as drawn, by the same means as the builds. All outlive it.
    ToleranceTally(const BuiltLooks& looks, OutcomeBook& book, std::vector<BuildLook> drawn);

    /// Fills `checks`, `verdicts`, `all_checks` and `builds` from those that were looked at.
    void add_to(ToleranceFindings& found, const BuildRuns& runs);

private:
    ToleratedVerdict verdict(std::size_t place, const BuildRuns& runs) const;
    ToleratedCheck check(std::size_t place, const BuildRuns& runs);
    std::optional<std::size_t> deciding(std::size_t check) const;

    const BuiltLooks& looks_;
    OutcomeBook& book_;
    std::vector<BuildLook> drawn_;
};

/// Where nothing varies, one build is all builds: intervals shrink to their shares.
void make_certain(ToleranceFindings& found);

/// The same builds looked at in some directions and in the whole field, for which the looks stand
/// now.
DirectionProof proof_of_directions(const BuiltLooks& looks, const BuildRuns& some,
                                   const BuildRuns& whole);

} // namespace glim
