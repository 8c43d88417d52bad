#include "judgement/explain.h"

#include "judgement/uncovered.h"
#include "machine/stop.h"

#include <algorithm>

namespace glim {

namespace {

/// Less than this is the grain of lattice corners, not a surface in the way.
constexpr Area least_told = square_millimetres(0.01);

using Taken = std::vector<std::pair<Standing, TakenArea>>;

/// The worst direction first, then those that are not met; places in the look.
std::vector<std::size_t> directions_to_explain(const LampVerdict& verdict)
{
    std::vector<std::size_t> at = {verdict.directions[verdict.worst].at};
    for (const DirectionVerdict& d : verdict.directions)
        if (d.outcome != Outcome::met)
            at.push_back(d.at);
    return at;
}

std::vector<Blocker> blockers_of(const std::vector<Taken>& taken, const Study& study)
{
    const Taken& at_worst = taken.front();
    const double failing = std::max<double>(1, double(taken.size() - 1));
    std::vector<Blocker> blockers;
    for (std::size_t part = 0; part < at_worst.size(); ++part) {
        const auto& [standing, area] = at_worst[part];
        Blocker b{.surface = study.surfaces[standing.surface].name,
                  .twin = standing.twin,
                  .alone_at_worst = area.alone,
                  .jointly_at_worst = area.jointly,
                  .mean_alone = {},
                  .mean_jointly = {}};
        for (std::size_t i = 1; i < taken.size(); ++i) {
            b.mean_alone += taken[i][part].second.alone / failing;
            b.mean_jointly += taken[i][part].second.jointly / failing;
        }
        if (b.taken_at_worst() + b.taken_on_mean() > least_told)
            blockers.push_back(std::move(b));
    }
    std::stable_sort(blockers.begin(), blockers.end(), [](const Blocker& a, const Blocker& b) {
        if (a.taken_on_mean() != b.taken_on_mean())
            return a.taken_on_mean() > b.taken_on_mean();
        return a.taken_at_worst() > b.taken_at_worst();
    });
    return blockers;
}

void explain(LampVerdict& verdict, const LampLook& look, const Study& study, const Eyes& eyes,
             const Workers& workers)
{
    if (verdict.directions.empty())
        return;
    verdict.uncovered = uncovered_ranges(verdict, look);
    const std::vector<std::size_t> at = directions_to_explain(verdict);
    std::vector<Taken> taken(at.size());
    const Workers silent{.threads = workers.threads, .stop = workers.stop, .progress = {}};
    const bool whole = for_each_index(at.size(), silent, [&](std::size_t i, unsigned) {
        taken[i] = eyes.taken(verdict.look, direction_of(look.toward[at[i]], look.frame));
    });
    if (!whole)
        throw Stopped();
    verdict.blockers = blockers_of(taken, study);
}

} // namespace

void explain(Findings& findings, const Study& study, const Eyes& eyes, const Workers& workers)
{
    for (CheckFindings& check : findings.checks)
        for (RowFindings& row : check.rows) {
            for (LampVerdict& lamp : row.lamps)
                explain(lamp, findings.looks[lamp.look], study, eyes, workers);
            if (row.together)
                explain(*row.together, findings.looks[row.together->look], study, eyes, workers);
        }
}

} // namespace glim
