#include "judgement/build_runs.h"

#include <algorithm>
#include <optional>

namespace glim {

BuildRuns run_builds(const BuiltLooks& looks, std::size_t count, const DeviationsOf& deviations,
                     const Workers& workers)
{
    BuildRuns runs(count);
    std::vector<std::optional<BuiltLooks::Bench>> benches(workers.count());
    for_each_index(count, workers, [&](std::size_t i, unsigned worker) {
        std::optional<BuiltLooks::Bench>& bench = benches[worker];
        if (!bench)
            bench.emplace(looks.bench());
        runs[i] = looks.look(*bench, deviations(i));
    });
    return runs;
}

Workers StagedProgress::stage(std::size_t pieces)
{
    before_ += next_;
    next_ = pieces;
    Workers stage = workers_;
    if (workers_.progress)
        stage.progress = [this, before = before_](std::size_t done, std::size_t) {
            workers_.progress(std::min(before + done, all_), all_);
        };
    return stage;
}

} // namespace glim
