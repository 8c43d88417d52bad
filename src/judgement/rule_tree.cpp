#include "judgement/rule_tree.h"

#include "judgement/conditions.h"
#include "model/nearest_word.h"

#include <algorithm>
#include <cassert>
#include <limits>

namespace glim {

namespace {

/// An outcome, with the figure it hangs on.
struct Answer {
    Outcome outcome = Outcome::not_applicable;
    double margin = std::numeric_limits<double>::infinity(); ///< LampVerdict::relative_margin
    std::optional<Deciding> deciding = {};
    Because because = Because::of_the_figures; ///< what no verdict tells
    std::string explanation = {};
};

/// Mirror images differ by the rounding of their placement. Margins closer than this, as a share of
/// what is asked, are the same, and the lamp as drawn is the one to name.
constexpr double alike = 1e-4;

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

/// What is asked of one side: the lamps of the check, and those that rules depend on.
struct SideGroups {
    Group asked, consulted;
};

std::string quoted_functions(const std::vector<LampFunction>& functions)
{
    std::string words;
    for (const FunctionWord& w : function_words)
        if (std::find(functions.begin(), functions.end(), w.function) != functions.end())
            words += (words.empty() ? "" : " or ") + std::string(w.words);
    return words;
}

class Tree {
public:
    Tree(const CheckFindings& check, const RuleGround& ground, const std::vector<LampLook>& looks)
        : check_(check), ground_(ground), looks_(looks)
    {
    }

    Answer of_side(const SideGroups& side) const
    {
        std::vector<Answer> answers;
        for (const std::size_t lamp : side.asked)
            if (may_answer(lamp, side.asked))
                answers.push_back(of(check_.rule, side, side.asked, lamp));
        return answers.empty() ? of(check_.rule, side, side.asked, std::nullopt) : best_of(answers);
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
            return row.proof_from.empty() && passes_over(lamp) &&
                   !std::all_of(side.begin(), side.end(), passes_over);
        });
    }

    /// With one lamp that answers alone, or, where none could answer every row, row by row.
    Answer of(const std::string& id, const SideGroups& side, const Group& group,
              std::optional<std::size_t> lamp) const
    {
        const Rule* rule = ground_.table.rule(id);
        if (!rule)
            return of_row(row_place(id), group, lamp);
        if (!all_hold(rule->when, ground_.vehicle))
            return {};
        if (!rule->of_other_lamps.empty())
            return of_others(*rule, side);
        return combined(*rule, side, group, lamp);
    }

    Answer combined(const Rule& rule, const SideGroups& side, const Group& group,
                    std::optional<std::size_t> lamp) const
    {
        std::vector<Answer> answers;
        bool lamp_itself = false;
        for (const std::string& part : rule.parts) {
            answers.push_back(of(part, side, group, lamp));
            const Rule* below = ground_.table.rule(part);
            lamp_itself |= applies(answers.back()) && (!below || below->of_other_lamps.empty());
        }
        if (!lamp_itself && group == side.asked)
            return {};
        switch (rule.combine) {
        case Combine::all_of:
            return worst_of(answers);
        case Combine::any_of:
            return best_of(answers);
        case Combine::choose_one:
            break;
        }
        return chosen(rule, answers);
    }

    Answer chosen(const Rule& rule, const std::vector<Answer>& answers) const
    {
        for (std::size_t i = 0; i < rule.parts.size(); ++i)
            if (std::find(check_.options.begin(), check_.options.end(), rule.parts[i]) !=
                check_.options.end())
                return answers[i];
        Answer worst = worst_of(answers);
        if (!applies(worst) || best_of(answers).outcome == Outcome::not_met)
            return worst;
        worst.outcome = Outcome::undecided;
        worst.because = Because::option_not_declared;
        worst.explanation = "`" + rule.id + "` can be met by " + listed(rule.parts, "or");
        return worst;
    }

    /// Each of the other lamps alone; the best one is enough.
    Answer of_others(const Rule& rule, const SideGroups& side) const
    {
        std::vector<Answer> answers;
        for (const std::size_t lamp : side.consulted) {
            const LampFunction function = looks_[check_.rows.front().lamps[lamp].look].function;
            if (std::find(rule.of_other_lamps.begin(), rule.of_other_lamps.end(), function) !=
                rule.of_other_lamps.end())
                answers.push_back(combined(rule, side, {lamp}, lamp));
        }
        Answer best = best_of(answers);
        if (applies(best))
            return best;
        return {.outcome = Outcome::not_met,
                .margin = -1,
                .because = Because::no_such_lamp,
                .explanation = "`" + rule.id + "` asks a " + quoted_functions(rule.of_other_lamps) +
                               " on the same side"};
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
        return {findings.together->outcome, findings.together->relative_margin,
                Deciding{row, 0, true}};
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
        return {verdict.outcome, verdict.relative_margin, Deciding{row, lamp, false}};
    }

    const CheckFindings& check_;
    const RuleGround& ground_;
    const std::vector<LampLook>& looks_;
};

/// The side that is drawn first comes first; a lamp on the median plane is on both.
std::vector<SideGroups> sides_of(const std::vector<LampVerdict>& lamps,
                                 const std::vector<bool>& consulted,
                                 const std::vector<LampLook>& looks)
{
    std::vector<Side> sides;
    for (std::size_t l = 0; l < lamps.size(); ++l)
        if (const Side side = looks[lamps[l].look].side;
            !consulted[l] && side != Side::median &&
            std::find(sides.begin(), sides.end(), side) == sides.end())
            sides.push_back(side);
    if (sides.empty())
        sides.push_back(Side::median);
    std::vector<SideGroups> groups;
    for (const Side wanted : sides) {
        SideGroups group;
        for (std::size_t l = 0; l < lamps.size(); ++l)
            if (const Side side = looks[lamps[l].look].side; side == wanted || side == Side::median)
                (consulted[l] ? group.consulted : group.asked).push_back(l);
        groups.push_back(std::move(group));
    }
    return groups;
}

} // namespace

void answer_from_rows(CheckFindings& check, const RuleGround& ground,
                      const std::vector<LampLook>& looks)
{
    const Tree tree(check, ground, looks);
    Answer answer;
    for (const SideGroups& side : sides_of(check.rows.front().lamps, ground.consulted, looks))
        answer = worse_side(answer, tree.of_side(side));
    check.outcome = answer.outcome;
    check.because = answer.because;
    check.explanation = std::move(answer.explanation);
    check.deciding = answer.deciding;
}

} // namespace glim
