#include "judgement/deciding_directions.h"

#include "machine/stop.h"

#include <algorithm>
#include <numeric>

namespace glim {

namespace {

constexpr std::size_t trial_builds = 32;

std::vector<std::vector<double>> builds_of(const TrialBuilds& trials)
{
    const auto& [moves, study, design] = trials;
    const std::vector<BuildFactor>& factors = moves.factors();
    const std::vector<double> drawn(factors.size());
    std::vector<std::vector<double>> all{drawn};
    for (std::size_t f = 0; f < factors.size(); ++f)
        for (const double sense : {1.0, -1.0}) {
            all.push_back(drawn);
            all.back()[f] = sense * stack_limit(study.variation.tolerances[factors[f].tolerance],
                                                factors[f].way);
        }
    for (std::size_t i = 0; i < std::min(trial_builds, design.builds()); ++i)
        all.push_back(design.build(i));
    return all;
}

/// The places of the least, in order of place.
std::vector<std::size_t> least_of(const std::vector<Area>& standings, std::size_t most)
{
    std::vector<std::size_t> places(standings.size());
    std::iota(places.begin(), places.end(), std::size_t{0});
    std::stable_sort(places.begin(), places.end(),
                     [&](std::size_t a, std::size_t b) { return standings[a] < standings[b]; });
    places.resize(std::min(most, places.size()));
    std::sort(places.begin(), places.end());
    return places;
}

} // namespace

std::vector<std::vector<std::size_t>> deciding_directions(const BuiltLooks& looks,
                                                          const TrialBuilds& trials,
                                                          std::size_t most, const Workers& workers)
{
    const std::vector<std::vector<double>> builds = builds_of(trials);
    std::vector<std::vector<std::vector<Area>>> found(builds.size());
    std::vector<std::optional<BuiltLooks::Bench>> benches(workers.count());
    const bool whole = for_each_index(builds.size(), workers, [&](std::size_t i, unsigned worker) {
        if (!benches[worker])
            benches[worker].emplace(looks.bench());
        found[i] = looks.standings(*benches[worker], builds[i]);
    });
    if (!whole)
        throw Stopped();
    std::vector<std::vector<std::size_t>> chosen;
    for (std::size_t v = 0; v < looks.followed().size(); ++v) {
        std::vector<Area> worst = found.front()[v];
        for (const auto& build : found)
            for (std::size_t i = 0; i < worst.size(); ++i)
                worst[i] = std::min(worst[i], build[v][i]);
        const std::vector<std::size_t>& at = looks.asked_of(looks.followed()[v]).at;
        std::vector<std::size_t> places;
        for (const std::size_t i : least_of(worst, most))
            places.push_back(at[i]);
        chosen.push_back(std::move(places));
    }
    return chosen;
}

} // namespace glim
