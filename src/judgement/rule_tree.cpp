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

/// Of both sides of the vehicle the worse one; the first where they are alike.
Answer worse_side(const Answer& first, const Answer& second)
{
    if (!applies(first) || !applies(second))
        return applies(first) ? first : second;
    const bool same = first.outcome == second.outcome && first.margin - second.margin < alike;
    return !same && worse(second, first) ? second : first;
}

/// The lamps on one side, as places in every row's `lamps`.
using Group = std::vector<std::size_t>;

class Tree {
public:
    Tree(const CheckFindings& check, const RuleTable& table) : check_(check), table_(table) {}

    Answer of_side(const std::string& id, const Group& side) const
    {
        std::vector<Answer> answers;
        for (const std::size_t lamp : side)
            if (may_answer(lamp, side))
                answers.push_back(of(id, side, lamp));
        return answers.empty() ? of(id, side, std::nullopt) : best_of(answers);
    }

private:
    /// Whether no row speaks to others of the side and not to this lamp: an indicator's rule is not
    /// answered by a position lamp because some of its rows do not concern that one.
    bool may_answer(std::size_t lamp, const Group& side) const
    {
        return std::none_of(check_.rows.begin(), check_.rows.end(), [&](const RowFindings& row) {
            const auto passes_over = [&](std::size_t l) {
                return row.lamps[l].because == Because::another_function;
            };
            return passes_over(lamp) && !std::all_of(side.begin(), side.end(), passes_over);
        });
    }

    /// With one lamp that answers alone, or, where none could answer every row, row by row.
    Answer of(const std::string& id, const Group& group, std::optional<std::size_t> lamp) const
    {
        if (const Rule* rule = table_.rule(id)) {
            std::vector<Answer> answers;
            for (const std::string& part : rule->parts)
                answers.push_back(of(part, group, lamp));
            return rule->combine == Combine::all_of ? worst_of(answers) : best_of(answers);
        }
        return of_row(row_place(id), group, lamp);
    }

    std::size_t row_place(const std::string& id) const
    {
        const auto found = std::find_if(check_.rows.begin(), check_.rows.end(),
                                        [&](const RowFindings& r) { return r.row.id == id; });
        assert(found != check_.rows.end());
        return static_cast<std::size_t>(found - check_.rows.begin());
    }

    Answer of_row(std::size_t row, const Group& group, std::optional<std::size_t> lamp) const
    {
        const RowFindings& findings = check_.rows[row];
        switch (findings.row.answered_by) {
        case AnsweredBy::one_alone:
            return lamp ? of_lamp(row, *lamp) : best_of(of_lamps(row, group));
        case AnsweredBy::each:
            return worst_of(of_lamps(row, group));
        case AnsweredBy::together:
            break;
        }
        if (!findings.together)
            return {};
        return {findings.together->outcome, findings.together->margin, Deciding{row, 0, true}};
    }

    std::vector<Answer> of_lamps(std::size_t row, const Group& group) const
    {
        std::vector<Answer> answers;
        for (const std::size_t lamp : group)
            answers.push_back(of_lamp(row, lamp));
        return answers;
    }

    Answer of_lamp(std::size_t row, std::size_t lamp) const
    {
        const LampVerdict& verdict = check_.rows[row].lamps[lamp];
        return {verdict.outcome, verdict.margin, Deciding{row, lamp, false}};
    }

    const CheckFindings& check_;
    const RuleTable& table_;
};

/// The side that is drawn first comes first; a lamp on the median plane is on both.
std::vector<Group> sides_of(const std::vector<LampVerdict>& lamps,
                            const std::vector<LampLook>& looks)
{
    std::vector<Side> sides;
    for (const LampVerdict& lamp : lamps)
        if (const Side side = looks[lamp.look].side;
            side != Side::median && std::find(sides.begin(), sides.end(), side) == sides.end())
            sides.push_back(side);
    if (sides.empty())
        sides.push_back(Side::median);
    std::vector<Group> groups;
    for (const Side wanted : sides) {
        Group group;
        for (std::size_t l = 0; l < lamps.size(); ++l)
            if (const Side side = looks[lamps[l].look].side; side == wanted || side == Side::median)
                group.push_back(l);
        groups.push_back(std::move(group));
    }
    return groups;
}

} // namespace

void answer_from_rows(CheckFindings& check, const RuleTable& table,
                      const std::vector<LampLook>& looks)
{
    const Tree tree(check, table);
    Answer answer;
    for (const Group& side : sides_of(check.rows.front().lamps, looks))
        answer = worse_side(answer, tree.of_side(check.rule, side));
    check.outcome = answer.outcome;
    check.deciding = answer.deciding;
}

} // namespace glim
