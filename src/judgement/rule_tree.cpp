#include "judgement/rule_tree.h"

#include <algorithm>
#include <cassert>
#include <limits>

namespace glim {

namespace {

/// An outcome, with the figure it hangs on.
struct Answer {
    Outcome outcome = Outcome::not_applicable;
    Area margin = square_millimetres(std::numeric_limits<double>::infinity());
    std::optional<Deciding> deciding;
};

/// Mirror images differ by the rounding of their placement. Margins closer than this are the same,
/// and the lamp as drawn is the one to name.
constexpr Area alike = square_millimetres(0.1);

bool worse(const Answer& a, const Answer& b)
{
    return a.outcome != b.outcome ? a.outcome < b.outcome : a.margin < b.margin;
}

bool applies(const Answer& a) { return a.outcome != Outcome::not_applicable; }

/// The worst of those that apply.
Answer worst_of(const std::vector<Answer>& answers)
{
    Answer worst;
    for (const Answer& a : answers)
        if (applies(a) && (!applies(worst) || worse(a, worst)))
            worst = a;
    return worst;
}

/// The best of those that apply; the first among equals.
Answer best_of(const std::vector<Answer>& answers)
{
    Answer best;
    for (const Answer& a : answers)
        if (applies(a) && (!applies(best) || worse(best, a)))
            best = a;
    return best;
}

/// Of both sides of the vehicle the worse one; the drawn side where they are alike.
Answer worse_side(const Answer& drawn, const Answer& mirrored)
{
    if (!applies(mirrored))
        return drawn;
    const bool same = drawn.outcome == mirrored.outcome && drawn.margin - mirrored.margin < alike;
    return !applies(drawn) || (!same && worse(mirrored, drawn)) ? mirrored : drawn;
}

/// The lamps on one side, as places in every row's `lamps`.
using Group = std::vector<std::size_t>;

class Tree {
public:
    Tree(const CheckFindings& check, const RuleTable& table) : check_(check), table_(table) {}

    Answer of(const std::string& id, const Group& group, std::size_t lamp) const
    {
        if (const Rule* rule = table_.rule(id)) {
            std::vector<Answer> answers;
            for (const std::string& part : rule->parts)
                answers.push_back(of(part, group, lamp));
            return rule->combine == Combine::all_of ? worst_of(answers) : best_of(answers);
        }
        return of_row(row_place(id), group, lamp);
    }

private:
    std::size_t row_place(const std::string& id) const
    {
        const auto found = std::find_if(check_.rows.begin(), check_.rows.end(),
                                        [&](const RowFindings& r) { return r.row.id == id; });
        assert(found != check_.rows.end());
        return static_cast<std::size_t>(found - check_.rows.begin());
    }

    Answer of_row(std::size_t row, const Group& group, std::size_t lamp) const
    {
        const RowFindings& findings = check_.rows[row];
        switch (findings.row.answered_by) {
        case AnsweredBy::one_alone:
            return of_lamp(row, lamp);
        case AnsweredBy::each: {
            std::vector<Answer> answers;
            for (const std::size_t l : group)
                answers.push_back(of_lamp(row, l));
            return worst_of(answers);
        }
        case AnsweredBy::together:
            break;
        }
        if (!findings.together)
            return {};
        return {findings.together->outcome, findings.together->margin, Deciding{row, 0, true}};
    }

    Answer of_lamp(std::size_t row, std::size_t lamp) const
    {
        const LampVerdict& verdict = check_.rows[row].lamps[lamp];
        return {verdict.outcome, verdict.margin, Deciding{row, lamp, false}};
    }

    const CheckFindings& check_;
    const RuleTable& table_;
};

} // namespace

void answer_from_rows(CheckFindings& check, const RuleTable& table,
                      const std::vector<LampLook>& looks)
{
    Group drawn, mirrored;
    const std::vector<LampVerdict>& lamps = check.rows.front().lamps;
    for (std::size_t l = 0; l < lamps.size(); ++l) {
        const LampLook& look = looks[lamps[l].look];
        if (!look.twin)
            drawn.push_back(l);
        if (look.twin || look.side == Side::median)
            mirrored.push_back(l);
    }
    const bool has_twins = std::any_of(mirrored.begin(), mirrored.end(),
                                       [&](std::size_t l) { return looks[lamps[l].look].twin; });

    const Tree tree(check, table);
    const auto answer_of = [&](const Group& group) {
        std::vector<Answer> answers;
        for (const std::size_t lamp : group)
            answers.push_back(tree.of(check.rule, group, lamp));
        return best_of(answers);
    };
    const Answer answer = worse_side(answer_of(drawn), has_twins ? answer_of(mirrored) : Answer{});
    check.outcome = answer.outcome;
    check.deciding = answer.deciding;
}

} // namespace glim
