#include "judgement/needed_tolerance.h"

#include "judgement/build_runs.h"
#include "judgement/build_statistics.h"

#include <algorithm>

namespace glim {

namespace {

constexpr double factor_grain = 1.0 / 64;

} // namespace

NeededToleranceSearch::NeededToleranceSearch(const BuiltLooks& looks, const BuildDesign& design,
                                             OutcomeBook& book, std::size_t tolerances)
    : looks_(looks), design_(design), book_(book), tolerances_(tolerances)
{
}

std::optional<ShareOfBuilds> NeededToleranceSearch::share(std::size_t tolerance, double factor,
                                                          const Workers& workers) const
{
    std::vector<double> scale(tolerances_, 1.0);
    scale[tolerance] = factor;
    const BuildRuns runs = run_builds(
        looks_, builds(design_),
        [&](std::size_t i) { return design_.build(design_.mixed_place(i), scale); }, workers);
    std::size_t met = 0;
    for (const std::vector<BuildLook>& run : runs) {
        if (run.empty())
            return std::nullopt;
        met += meets_all(run, book_) ? 1 : 0;
    }
    return share_of(met, runs.size());
}

std::optional<NeededTolerance> NeededToleranceSearch::find(const ToleranceTask& task,
                                                           const Workers& workers) const
{
    NeededTolerance needed;
    needed.tolerance = *task.asked;
    needed.wanted = task.share;
    needed.builds = builds(design_);
    std::optional<ShareOfBuilds> there;
    // The share with that factor, kept where it is enough.
    const auto enough = [&](double factor) {
        there = share(needed.tolerance, factor, workers);
        const bool kept = there && there->share >= needed.wanted;
        if (kept || (there && factor == 0))
            needed.there = *there;
        return kept;
    };
    if (!enough(0))
        return there ? std::optional(needed) : std::nullopt;
    if (enough(most_tolerance_factor)) {
        needed.factor = most_tolerance_factor;
        needed.at_least = true;
        return needed;
    }
    double good = 0, bad = most_tolerance_factor;
    while (there && bad - good > factor_grain)
        (enough((good + bad) / 2) ? good : bad) = (good + bad) / 2;
    needed.factor = good;
    return there ? std::optional(needed) : std::nullopt;
}

} // namespace glim
