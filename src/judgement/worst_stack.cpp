#include "judgement/worst_stack.h"

#include <algorithm>

namespace glim {

namespace {

/// Steps of the search; each looks at every single change.
constexpr int most_steps = 12;

class StackSearch {
public:
    StackSearch(const BuiltLooks& looks, const std::vector<double>& limits, const Workers& workers)
        : looks_(looks), limits_(limits), workers_(workers)
    {
    }

    /// Place of the worst of these corners for one verdict; none where not all were looked at.
    std::optional<StackUp> worst(const std::vector<std::vector<double>>& corners,
                                 const BuildRuns& runs, std::size_t verdict) const
    {
        std::optional<std::size_t> worst;
        for (std::size_t i = 0; i < runs.size(); ++i) {
            if (runs[i].empty())
                return std::nullopt;
            if (!worst ||
                standing(runs[i][verdict], verdict) < standing(runs[*worst][verdict], verdict))
                worst = i;
        }
        const BuildLook& look = runs[*worst][verdict];
        const LampLook& of = looks_.look_of(looks_.followed()[verdict]);
        return StackUp{corners[*worst], in_mm2(look.figure), of.toward[look.at], look.outcome,
                       false,           runs.size()};
    }

    /// Its figure as exactly as the lattice has it.
    void look_closely(StackUp& stack, std::size_t verdict) const
    {
        BuiltLooks::Bench bench = looks_.bench(RimSearch::close);
        const BuildLook look = looks_.look(bench, stack.deviations)[verdict];
        stack.figure = in_mm2(look.figure);
        stack.toward = looks_.look_of(looks_.followed()[verdict]).toward[look.at];
        stack.outcome = look.outcome;
    }

    BuildRuns look_at(const std::vector<std::vector<double>>& corners) const
    {
        return run_builds(
            looks_, corners.size(), [&](std::size_t i) { return corners[i]; }, workers_);
    }

    std::vector<std::optional<StackUp>> all_corners() const
    {
        std::vector<std::vector<double>> corners;
        for (std::size_t bits = 0; bits < (std::size_t{1} << limits_.size()); ++bits) {
            std::vector<double> corner = limits_;
            for (std::size_t f = 0; f < corner.size(); ++f)
                corner[f] = (bits >> f & 1U) != 0 ? -corner[f] : corner[f];
            corners.push_back(std::move(corner));
        }
        const BuildRuns runs = look_at(corners);
        std::vector<std::optional<StackUp>> stacks;
        for (std::size_t v = 0; v < looks_.followed().size(); ++v) {
            stacks.push_back(worst(corners, runs, v));
            if (stacks.back())
                stacks.back()->every_corner = true;
        }
        return stacks;
    }

    std::optional<StackUp> climb(const std::vector<double>& slopes, std::size_t verdict) const
    {
        std::vector<double> corner = limits_;
        for (std::size_t f = 0; f < corner.size(); ++f)
            corner[f] = slopes[f] > 0 ? -corner[f] : corner[f];
        std::size_t looked_at = 0;
        std::optional<StackUp> best;
        for (int step = 0; step < most_steps; ++step) {
            // The corner itself comes first, so that among equals the search ends.
            std::vector<std::vector<double>> corners(corner.size() + 1, corner);
            for (std::size_t f = 0; f < corner.size(); ++f)
                corners[f + 1][f] = -corner[f];
            best = worst(corners, look_at(corners), verdict);
            if (!best)
                return std::nullopt;
            looked_at += corners.size();
            if (best->deviations == corner)
                break;
            corner = best->deviations;
        }
        best->looked_at = looked_at;
        return best;
    }

private:
    Area standing(const BuildLook& look, std::size_t verdict) const
    {
        const RuleRow& row = *looks_.row_of(looks_.followed()[verdict]).row;
        return std::holds_alternative<LeastArea>(row.criterion) ? look.figure
                                                                : Area() - look.figure;
    }

    const BuiltLooks& looks_;
    const std::vector<double>& limits_;
    const Workers& workers_;
};

} // namespace

std::vector<std::optional<StackUp>> worst_stacks(const BuiltLooks& looks,
                                                 const std::vector<double>& limits,
                                                 const std::vector<std::vector<double>>& slopes,
                                                 const Workers& workers)
{
    std::vector<std::optional<StackUp>> stacks(looks.followed().size());
    if (limits.empty())
        return stacks;
    const StackSearch search(looks, limits, workers);
    if (limits.size() < 64 && (std::size_t{1} << limits.size()) <= most_corners)
        stacks = search.all_corners();
    else
        for (std::size_t v = 0; v < stacks.size(); ++v)
            stacks[v] = search.climb(slopes[v], v);
    for (std::size_t v = 0; v < stacks.size(); ++v)
        if (stacks[v])
            search.look_closely(*stacks[v], v);
    return stacks;
}

} // namespace glim
