#pragma once

#include "judgement/build_runs.h"
#include "judgement/tolerance_findings.h"
#include "model/study.h"

namespace glim {

/// Each tolerance; each way of those that vary in several; where both are there, part and
/// installation.
std::vector<Contributor> contributors_of(const Study& study,
                                         const std::vector<BuildFactor>& factors);

/// Builds of both sets and of the mixtures, one list a contributor; see MixedFigures.
struct MixedRuns {
    const BuildRuns& first;
    const BuildRuns& other;
    const std::vector<BuildRuns>& mixed;
};
/// Of one followed verdict, one a contributor; empty where its figure does not vary.
std::vector<VarianceShare> variance_shares(const MixedRuns& runs, std::size_t verdict,
                                           std::size_t shifts);

} // namespace glim
