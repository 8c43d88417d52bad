#pragma once

#include "judgement/built_looks.h"
#include "machine/workers.h"

#include <functional>

namespace glim {

/// What builds show: one list a build, one entry a followed verdict. A build that was not looked
/// at, because the work was stopped, has an empty list.
using BuildRuns = std::vector<std::vector<BuildLook>>;

/// Deviations of the i-th build.
using DeviationsOf = std::function<std::vector<double>(std::size_t i)>;

/// The same for any number of threads.
BuildRuns run_builds(const BuiltLooks& looks, std::size_t count, const DeviationsOf& deviations,
                     const Workers& workers);

/// Tells of work in stages as of one.
class StagedProgress {
public:
    /// `workers` outlives it.
    StagedProgress(const Workers& workers, std::size_t all) : workers_(workers), all_(all) {}

    /// For the next so many pieces; the stage before is over.
    Workers stage(std::size_t pieces);

private:
    const Workers& workers_;
    std::size_t all_, before_ = 0, next_ = 0;
};

} // namespace glim
