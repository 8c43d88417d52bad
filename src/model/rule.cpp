#include "model/rule.h"

#include <algorithm>

namespace glim {

namespace {

template <class Thing>
const Thing* with_id(const std::vector<Thing>& things, std::string_view id)
{
    const auto found = std::find_if(things.begin(), things.end(),
                                    [&](const Thing& thing) { return thing.id == id; });
    return found == things.end() ? nullptr : &*found;
}

void gather(const RuleTable& table, std::string_view id, std::vector<const RuleRow*>& rows)
{
    const RuleRow* row = table.row(id);
    if (row && std::find(rows.begin(), rows.end(), row) == rows.end())
        rows.push_back(row);
    if (const Rule* rule = table.rule(id))
        for (const std::string& part : rule->parts)
            gather(table, part, rows);
}

void gather(const RuleTable& table, std::string_view id, std::vector<const Rule*>& rules)
{
    const Rule* rule = table.rule(id);
    if (!rule || std::find(rules.begin(), rules.end(), rule) != rules.end())
        return;
    rules.push_back(rule);
    for (const std::string& part : rule->parts)
        gather(table, part, rules);
}

} // namespace

bool is_length(Measured quantity)
{
    return quantity == Measured::overall_width || quantity == Measured::axis_height ||
           quantity == Measured::h_plane_height;
}

bool Condition::holds(Length value) const
{
    return (!at_least || value >= *at_least) && (!below || value < *below);
}

bool Condition::holds(std::string_view word) const
{
    if (!none_of.empty())
        return std::find(none_of.begin(), none_of.end(), word) == none_of.end();
    return std::find(one_of.begin(), one_of.end(), word) != one_of.end();
}

const RuleRow* RuleTable::row(std::string_view id) const { return with_id(rows, id); }

const Rule* RuleTable::rule(std::string_view id) const { return with_id(rules, id); }

const RuleRow* RuleTable::row_of_category(LampFunction function) const
{
    const auto gives_it = [&](const RuleRow& row) {
        const auto* gap = std::get_if<GapToLamp>(&row.criterion);
        return gap && gap->is_category &&
               std::find(row.functions.begin(), row.functions.end(), function) !=
                   row.functions.end();
    };
    const auto found = std::find_if(rows.begin(), rows.end(), gives_it);
    return found == rows.end() ? nullptr : &*found;
}

std::vector<const RuleRow*> rows_under(const RuleTable& table, std::string_view id)
{
    std::vector<const RuleRow*> rows;
    gather(table, id, rows);
    return rows;
}

std::vector<const Rule*> rules_under(const RuleTable& table, std::string_view id)
{
    std::vector<const Rule*> rules;
    gather(table, id, rules);
    return rules;
}

} // namespace glim
