#include "judgement/see.h"

#include "judgement/verdict.h"
#include "machine/stop.h"

#include <algorithm>

namespace glim {

Eyes::Eyes(const PreparedScene& scene, const Plan& plan, const Sampling& sampling)
{
    for (const std::vector<LampStanding>& standings : plan.standings) {
        std::vector<Eye> eyes;
        eyes.reserve(standings.size());
        for (const LampStanding& lamp : standings)
            eyes.push_back({scene.view_of(lamp, sampling),
                            scene.exact_view_of(lamp, sampling.touch), scene.obstacles_of(lamp)});
        eyes_.push_back(std::move(eyes));
    }
}

void Eyes::see(Plan& plan, const Workers& workers) const
{
    struct Task {
        std::size_t look, at;
    };
    std::vector<Task> tasks;
    for (std::size_t l = 0; l < plan.looks.size(); ++l) {
        LampLook& look = plan.looks[l];
        look.seen.assign(look.toward.size(), {});
        look.exact.assign(look.toward.size(), std::nullopt);
        for (std::size_t at = 0; at < look.toward.size(); ++at)
            tasks.push_back({l, at});
    }
    const bool whole = for_each_index(tasks.size(), workers, [&](std::size_t i, unsigned) {
        LampLook& look = plan.looks[tasks[i].look];
        const Direction toward = direction_of(look.toward[tasks[i].at], look.frame);
        for (const Eye& eye : eyes_[tasks[i].look])
            look.seen[tasks[i].at] += seen_toward(eye.view, toward);
    });
    if (!whole)
        throw Stopped();
}

void Eyes::ask_exactly(LampLook& look, std::size_t place, const std::vector<std::size_t>& at,
                       const Workers& workers) const
{
    const Workers silent{.threads = workers.threads, .stop = workers.stop, .progress = {}};
    const bool whole = for_each_index(at.size(), silent, [&](std::size_t i, unsigned) {
        const Direction toward = direction_of(look.toward[at[i]], look.frame);
        ExactArea sum;
        for (const Eye& eye : eyes_[place]) {
            const ExactArea exact = eye.exact.toward(toward);
            sum.visible += exact.visible;
            sum.rounding += exact.rounding;
        }
        look.exact[at[i]] = sum;
    });
    if (!whole)
        throw Stopped();
}

void Eyes::settle(const RuleRow& row, const Asked& asked, Plan& plan, const Workers& workers) const
{
    if (asked.not_applicable)
        return;
    // Each round asks at least one direction that was not asked before, so it ends.
    LampLook& look = plan.looks[asked.look];
    for (;;) {
        const auto hanging = still_hanging(verdict_of(row, asked, look), look);
        if (hanging.empty())
            return;
        ask_exactly(look, asked.look, hanging, workers);
    }
}

void Eyes::settle(Plan& plan, const Workers& workers) const
{
    for (const AskedCheck& check : plan.checks)
        for (const AskedRow& row : check.rows) {
            for (const Asked& asked : row.lamps)
                settle(*row.row, asked, plan, workers);
            for (const Asked& asked : row.together)
                settle(*row.row, asked, plan, workers);
        }
}

std::vector<std::pair<Standing, TakenArea>> Eyes::taken(std::size_t look,
                                                        const Direction& toward) const
{
    std::vector<std::pair<Standing, TakenArea>> sum;
    for (const Eye& eye : eyes_[look]) {
        const std::vector<TakenArea> taken = taken_toward(eye.view, toward);
        for (std::size_t i = 0; i < taken.size(); ++i) {
            const auto found = std::find_if(sum.begin(), sum.end(), [&](const auto& entry) {
                return entry.first.surface == eye.obstacles[i].surface &&
                       entry.first.twin == eye.obstacles[i].twin;
            });
            TakenArea& area = found != sum.end()
                                  ? found->second
                                  : sum.emplace_back(eye.obstacles[i], TakenArea{}).second;
            area.alone += taken[i].alone;
            area.jointly += taken[i].jointly;
        }
    }
    return sum;
}

} // namespace glim
