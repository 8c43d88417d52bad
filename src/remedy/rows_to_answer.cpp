#include "remedy/rows_to_answer.h"

#include "judgement/conditions.h"

#include <algorithm>

namespace glim {

namespace {

bool is_of_height(const Condition& c)
{
    return c.quantity == Measured::axis_height || c.quantity == Measured::h_plane_height;
}

/// Walks down a rule and takes the rows that the lamp has to answer itself.
class Walk {
public:
    Walk(const Study& study, const Check& check, const Lamp& lamp)
        : study_(study), check_(check), lamp_(lamp), table_(study.tables[check.table])
    {
    }

    void down(const std::string& id)
    {
        if (const RuleRow* row = table_.row(id))
            return take(*row);
        const Rule* rule = table_.rule(id);
        if (!rule || !rule->of_other_lamps.empty() || !all_hold(rule->when, study_.vehicle))
            return;
        for (const std::string& part : parts_to_answer(*rule))
            down(part);
    }

    std::vector<const RuleRow*> rows;

private:
    std::vector<std::string> parts_to_answer(const Rule& rule) const
    {
        if (rule.combine == Combine::all_of || rule.parts.empty())
            return rule.parts;
        const auto chosen = std::find_first_of(rule.parts.begin(), rule.parts.end(),
                                               check_.options.begin(), check_.options.end());
        if (rule.combine == Combine::choose_one && chosen != rule.parts.end())
            return {*chosen};
        return rule.combine == Combine::any_of ? std::vector{rule.parts.front()} : rule.parts;
    }

    void take(const RuleRow& row)
    {
        if (std::find(rows.begin(), rows.end(), &row) == rows.end() &&
            may_concern(row, study_, lamp_))
            rows.push_back(&row);
    }

public:
    static bool may_concern(const RuleRow& row, const Study& study, const Lamp& lamp)
    {
        std::vector<Condition> known = row.when;
        std::erase_if(known, is_of_height);
        return speaks_of(row, lamp.function) && all_hold(known, study, lamp, LampLook());
    }

private:
    const Study& study_;
    const Check& check_;
    const Lamp& lamp_;
    const RuleTable& table_;
};

} // namespace

RowsToAnswer rows_to_answer(const Study& study, const Check& check, const Lamp& lamp)
{
    RowsToAnswer answer;
    Walk walk(study, check, lamp);
    walk.down(check.rule);
    for (const RuleRow* row : walk.rows) {
        if (asks_light(row->criterion))
            answer.of_light.push_back(row);
        else if (asks_directions(row->criterion))
            answer.in_directions.push_back(row);
    }
    answer.speaks_of_lamp = !walk.rows.empty();
    for (const RuleRow& row : study.tables[check.table].rows)
        if (!asks_directions(row.criterion) && Walk::may_concern(row, study, lamp))
            answer.of_place.push_back(&row);
    return answer;
}

} // namespace glim
