#include "judgement/quick_check.h"

#include "judgement/between_directions.h"
#include "judgement/judge_plan.h"
#include "judgement/rank.h"
#include "judgement/see.h"

#include <algorithm>

namespace glim {

namespace {

std::vector<Outcome> outcomes(const Session& session, const Plan& plan)
{
    std::vector<Outcome> outcomes;
    for (const AskedCheck& asked : plan.checks)
        outcomes.push_back(judged(asked, session.study(), session.scene(), plan).outcome);
    return outcomes;
}

/// Each check judged by rays, and exactly where that is asked and hangs in the balance.
template <class Take>
void look_quickly(const Session& session, std::span<const std::size_t> checks, const QuickLook& how,
                  const Workers& workers, const Take& take)
{
    const Workers silent = workers.silent();
    Plan plan = plan_of(session.study(), session.scene(), checks, how.step);
    for (std::vector<bool>& certify : plan.certify)
        certify.assign(certify.size(), false);
    ask_what_outcomes_need(plan);
    const Eyes eyes(session.study(), session.scene(), plan, silent);
    eyes.see(plan, silent);
    for (LampLook& look : plan.looks)
        take_as_sampled(look);
    if (how.settled)
        eyes.settle(plan, silent);
    for (const AskedCheck& asked : plan.checks)
        take(judged(asked, session.study(), session.scene(), plan));
}

} // namespace

QuickAnswer quick_check(const Session& session, std::span<const std::size_t> checks,
                        const QuickLook& how, const Workers& workers)
{
    std::optional<Rank> worst;
    look_quickly(session, checks, how, workers, [&](const CheckFindings& found) {
        const Rank rank = rank_of(found);
        worst = worst ? std::min(*worst, rank) : rank;
    });
    const Rank answer = worst.value_or(Rank{Outcome::not_applicable, 0});
    return {answer.first, answer.second};
}

std::vector<QuickMargin> quick_margins(const Session& session, std::span<const std::size_t> checks,
                                       const QuickLook& how, const Workers& workers)
{
    std::vector<QuickMargin> margins;
    look_quickly(session, checks, how, workers, [&](const CheckFindings& found) {
        margins.push_back(
            {found.outcome, found.deciding ? found.deciding_verdict().margin : Area()});
    });
    return margins;
}

std::vector<Outcome> outcomes_of(const Session& session, std::span<const std::size_t> checks,
                                 OfFailures asked, const Workers& workers)
{
    const Sampling& sampling = session.study().sampling;
    Plan plan = plan_of(session.study(), session.scene(), checks, sampling.step);
    ask_what_outcomes_need(plan);
    const Eyes eyes(session.study(), session.scene(), plan, workers);
    eyes.see(plan, workers);
    eyes.settle(plan, workers);
    // What lies between the directions makes no row better.
    std::vector<Outcome> on_grid = outcomes(session, plan);
    if (asked == OfFailures::that_they_fail &&
        std::any_of(on_grid.begin(), on_grid.end(), [](Outcome o) { return o != Outcome::met; }))
        return on_grid;
    BetweenDirections(eyes, sampling, workers).refine(plan);
    return outcomes(session, plan);
}

} // namespace glim
