#pragma once

#include "judgement/tolerance_findings.h"

#include <span>

namespace glim {

ShareOfBuilds share_of(std::size_t met, std::size_t builds);

/// Requires: not empty.
FigureSpread spread_of(std::vector<double> figures);

/// Mean of independent estimates of one figure, with Student's 95 % interval. Requires: 2 to 30.
Estimate estimate_from(std::span<const double> estimates);

/// Figures of builds that differ in whom they take from where: `a` and `b` are two independent
/// sets, `mixed` is `a` with one contributor's deviations from `b`. All of one length, the builds
/// of each shift of the sequence behind each other, `shifts` times equally many.
struct MixedFigures {
    std::span<const double> a, b, mixed;
};
/// Nothing where the figure does not vary.
std::optional<VarianceShare> variance_share(const MixedFigures& figures, std::size_t shifts);

} // namespace glim
