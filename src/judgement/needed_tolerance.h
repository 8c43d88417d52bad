#pragma once

#include "judgement/build_design.h"
#include "judgement/built_looks.h"
#include "judgement/outcome_book.h"

namespace glim {

/// No tolerance is tried at more than this times its figures.
inline constexpr double most_tolerance_factor = 4;

/// By how much one tolerance may be multiplied for the wanted share of builds to meet every check:
/// halving the range between a factor that does and one that does not, with the same builds in all
/// else each time, until they are a 64th apart. The share need not fall evenly as a tolerance
/// grows; the factor told has been looked at. Nothing where the work was stopped.
class NeededToleranceSearch {
public:
    /// `looks` reach as far as the largest factor that is tried. All outlive it.
    NeededToleranceSearch(const BuiltLooks& looks, const BuildDesign& design, OutcomeBook& book,
                          std::size_t tolerances);

    std::optional<NeededTolerance> find(const ToleranceTask& task, const Workers& workers) const;

    static std::size_t builds(const BuildDesign& design) { return design.mixed_builds(); }
    /// Of builds, at most; for telling how far the work is.
    static std::size_t most_builds(const BuildDesign& design) { return 9 * builds(design); }

private:
    std::optional<ShareOfBuilds> share(std::size_t tolerance, double factor,
                                       const Workers& workers) const;

    const BuiltLooks& looks_;
    const BuildDesign& design_;
    OutcomeBook& book_;
    std::size_t tolerances_;
};

} // namespace glim
