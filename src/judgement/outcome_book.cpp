#include "judgement/outcome_book.h"

#include "judgement/judge_plan.h"
#include "judgement/rule_tree.h"

#include <algorithm>

namespace glim {

OutcomeBook::OutcomeBook(const BuiltLooks& looks, const Study& study, const PreparedScene& scene)
    : looks_(looks), study_(study)
{
    for (const AskedCheck& check : looks.plan().checks)
        drawn_.push_back(judged(check, study, scene, looks.plan()));
}

const std::vector<Outcome>& OutcomeBook::of(const std::vector<Outcome>& followed)
{
    const auto [known, is_new] = known_.try_emplace(followed);
    if (is_new)
        for (std::size_t c = 0; c < drawn_.size(); ++c)
            known->second.push_back(judge(c, followed));
    return known->second;
}

/// Margins do not change which outcome a rule comes to.
Outcome OutcomeBook::judge(std::size_t check, const std::vector<Outcome>& followed) const
{
    CheckFindings findings = drawn_[check];
    std::vector<bool> begun(findings.rows.size()); // the worse of two sides counts
    for (std::size_t i = 0; i < followed.size(); ++i) {
        const Followed& f = looks_.followed()[i];
        if (f.check != check)
            continue;
        RowFindings& row = findings.rows[f.row];
        if (!f.together)
            row.lamps[f.lamp].outcome = followed[i];
        else if (!begun[f.row] || followed[i] < row.together->outcome)
            row.together->outcome = followed[i];
        begun[f.row] = begun[f.row] || f.together;
    }
    const AskedCheck& asked = looks_.plan().checks[check];
    answer_from_rows(findings, {*asked.table, study_.vehicle, asked.lamps.consulted},
                     looks_.plan().looks);
    return findings.outcome;
}

const std::vector<Outcome>& outcomes_of(const std::vector<BuildLook>& build, OutcomeBook& book)
{
    std::vector<Outcome> followed;
    followed.reserve(build.size());
    for (const BuildLook& look : build)
        followed.push_back(look.outcome);
    return book.of(followed);
}

bool meets_all(const std::vector<BuildLook>& build, OutcomeBook& book)
{
    const std::vector<Outcome>& outcomes = outcomes_of(build, book);
    return std::all_of(outcomes.begin(), outcomes.end(),
                       [](Outcome o) { return o == Outcome::met; });
}

} // namespace glim
