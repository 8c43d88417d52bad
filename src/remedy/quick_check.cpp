#include "remedy/quick_check.h"

#include "judgement/between_directions.h"
#include "judgement/place_verdict.h"
#include "judgement/plan.h"
#include "judgement/rank.h"
#include "judgement/rule_tree.h"
#include "judgement/see.h"
#include "judgement/verdict.h"

#include <algorithm>

namespace glim {

namespace {

/// As sampled, without the bounds that only contours could narrow.
void take_as_sampled(LampLook& look)
{
    for (SeenArea& seen : look.seen) {
        const Area hidden = (seen.hidden_low + seen.hidden_high) / 2;
        seen.low = seen.high = seen.visible;
        seen.hidden_low = seen.hidden_high = hidden;
    }
}

LampVerdict verdict_of_one(const RuleRow& row, const Asked& asked, const Session& session,
                           const Plan& plan)
{
    const LampLook& look = plan.looks[asked.look];
    const Study& study = session.study();
    if (looks_in_directions(row, asked))
        return verdict_of(row, asked, look, study.sampling);
    if (!asks_directions(row.criterion))
        return place_verdict(row, asked, look, study, session.scene());
    LampVerdict verdict = begun_verdict(asked);
    if (!asked.not_applicable && asked.without_light)
        verdict.outcome = Outcome::no_photometric_data;
    return verdict;
}

CheckFindings judged(const AskedCheck& asked, const Session& session, const Plan& plan)
{
    CheckFindings check;
    check.name = asked.check->name;
    check.rule = asked.check->rule;
    check.options = asked.check->options;
    for (const AskedRow& row : asked.rows) {
        RowFindings findings{.row = *row.row, .lamps = {}, .together = {}};
        findings.proof_from = row.proof_from ? row.proof_from->name : "";
        for (const Asked& lamp : row.lamps)
            findings.lamps.push_back(verdict_of_one(*row.row, lamp, session, plan));
        for (const Asked& side : row.together) {
            LampVerdict verdict = verdict_of_one(*row.row, side, session, plan);
            if (!findings.together || rank_of(verdict) < rank_of(*findings.together))
                findings.together = std::move(verdict);
        }
        check.rows.push_back(std::move(findings));
    }
    answer_from_rows(check, {*asked.table, session.study().vehicle, asked.lamps.consulted},
                     plan.looks);
    return check;
}

std::vector<Outcome> outcomes(const Session& session, const Plan& plan)
{
    std::vector<Outcome> outcomes;
    for (const AskedCheck& asked : plan.checks)
        outcomes.push_back(judged(asked, session, plan).outcome);
    return outcomes;
}

} // namespace

QuickAnswer quick_check(const Session& session, std::span<const std::size_t> checks,
                        const QuickLook& how, const Workers& workers)
{
    const Workers silent{.threads = workers.threads, .stop = workers.stop, .progress = {}};
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
    Rank worst{Outcome::not_applicable, 0};
    for (std::size_t i = 0; i < plan.checks.size(); ++i) {
        const Rank rank = rank_of(judged(plan.checks[i], session, plan));
        worst = i == 0 ? rank : std::min(worst, rank);
    }
    return {worst.first, worst.second};
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
