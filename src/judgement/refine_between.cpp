#include "judgement/between_directions.h"
#include "judgement/verdict.h"

namespace glim {

BetweenDirections::BetweenDirections(const Eyes& eyes, const Sampling& sampling,
                                     const Workers& workers)
    : eyes_(eyes), sampling_(sampling), workers_(workers.silent())
{
}

void BetweenDirections::refine(Plan& plan, const RuleRow& row, Asked& asked) const
{
    const LampLook& look = plan.looks[asked.look];
    const LampVerdict verdict = verdict_of(row, asked, look, sampling_);
    if (verdict.outcome != Outcome::met || verdict.coverage.solid_angle == SolidAngle())
        return;
    const BetweenFound found = look_between(row, verdict, look);
    asked.subdivided_to = found.finest_step;
    eyes_.see_more(plan, asked, found.open, workers_);
}

void BetweenDirections::refine(Plan& plan) const
{
    for (AskedCheck& check : plan.checks)
        for (AskedRow& row : check.rows) {
            if (!std::holds_alternative<LeastArea>(row.row->criterion))
                continue;
            for (auto* list : {&row.lamps, &row.together})
                for (Asked& asked : *list)
                    if (looks_in_directions(*row.row, asked))
                        refine(plan, *row.row, asked);
        }
    eyes_.settle(plan, workers_);
}

void BetweenDirections::add_crossings(Findings& findings) const
{
    const auto add = [&](const RuleRow& row, LampVerdict& verdict) {
        if (!verdict.directions.empty() && !verdict.light)
            verdict.crossings = crossings_of(row, verdict, findings.looks[verdict.look]);
    };
    for (CheckFindings& check : findings.checks)
        for (RowFindings& row : check.rows) {
            for (LampVerdict& verdict : row.lamps)
                add(row.row, verdict);
            if (row.together)
                add(row.row, *row.together);
        }
}

} // namespace glim
