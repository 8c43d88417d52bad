#include "judgement/between_directions.h"
#include "judgement/verdict.h"

namespace glim {

namespace {

void refine(const RuleRow& row, Asked& asked, Plan& plan, const Eyes& eyes,
            const Sampling& sampling, const Workers& workers)
{
    const LampLook& look = plan.looks[asked.look];
    const LampVerdict verdict = verdict_of(row, asked, look, sampling);
    if (verdict.outcome != Outcome::met || verdict.coverage.solid_angle == SolidAngle())
        return;
    const BetweenFound found = look_between(row, verdict, look, eyes, sampling, workers);
    asked.subdivided_to = found.finest_step;
    eyes.see_more(plan, asked, found.open, workers);
}

} // namespace

void add_crossings(Findings& findings, const Eyes& eyes, const Workers& workers)
{
    const auto add = [&](const RuleRow& row, LampVerdict& verdict) {
        if (!verdict.directions.empty())
            verdict.crossings = crossings_of(row, verdict, findings.looks[verdict.look], eyes,
                                             findings.sampling, workers);
    };
    for (CheckFindings& check : findings.checks)
        for (RowFindings& row : check.rows) {
            for (LampVerdict& verdict : row.lamps)
                add(row.row, verdict);
            if (row.together)
                add(row.row, *row.together);
        }
}

void refine_between(Plan& plan, const Eyes& eyes, const Sampling& sampling, const Workers& workers)
{
    for (AskedCheck& check : plan.checks)
        for (AskedRow& row : check.rows) {
            if (!std::holds_alternative<LeastArea>(row.row->criterion))
                continue;
            for (auto* list : {&row.lamps, &row.together})
                for (Asked& asked : *list)
                    if (!asked.not_applicable)
                        refine(*row.row, asked, plan, eyes, sampling, workers);
        }
    eyes.settle(plan, workers);
}

} // namespace glim
