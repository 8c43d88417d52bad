#include "judgement/judge_plan.h"

#include "judgement/place_verdict.h"
#include "judgement/rank.h"
#include "judgement/rule_tree.h"
#include "judgement/verdict.h"

namespace glim {

namespace {

LampVerdict verdict_of_one(const RuleRow& row, const Asked& asked, const Study& study,
                           const PreparedScene& scene, const Plan& plan)
{
    const LampLook& look = plan.looks[asked.look];
    if (looks_in_directions(row, asked))
        return verdict_of(row, asked, look, study.sampling);
    if (!asks_directions(row.criterion))
        return place_verdict(row, asked, look, study, scene);
    LampVerdict verdict = begun_verdict(asked);
    if (!asked.not_applicable && asked.without_light)
        verdict.outcome = Outcome::no_photometric_data;
    return verdict;
}

} // namespace

CheckFindings judged(const AskedCheck& asked, const Study& study, const PreparedScene& scene,
                     const Plan& plan)
{
    CheckFindings check;
    check.name = asked.check->name;
    check.rule = asked.check->rule;
    check.options = asked.check->options;
    for (const AskedRow& row : asked.rows) {
        RowFindings findings{.row = *row.row, .lamps = {}, .together = {}};
        findings.proof_from = row.proof_from ? row.proof_from->name : "";
        for (const Asked& lamp : row.lamps)
            findings.lamps.push_back(verdict_of_one(*row.row, lamp, study, scene, plan));
        for (const Asked& side : row.together) {
            LampVerdict verdict = verdict_of_one(*row.row, side, study, scene, plan);
            if (!findings.together || rank_of(verdict) < rank_of(*findings.together))
                findings.together = std::move(verdict);
        }
        check.rows.push_back(std::move(findings));
    }
    answer_from_rows(check, {*asked.table, study.vehicle, asked.lamps.consulted}, plan.looks);
    return check;
}

void take_as_sampled(LampLook& look)
{
    for (SeenArea& seen : look.seen) {
        const Area hidden = (seen.hidden_low + seen.hidden_high) / 2;
        seen.low = seen.high = seen.visible;
        seen.hidden_low = seen.hidden_high = hidden;
    }
}

} // namespace glim
