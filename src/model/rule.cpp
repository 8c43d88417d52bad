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

} // namespace

bool Condition::holds(Length value) const
{
    return (!at_least || value >= *at_least) && (!below || value < *below);
}

const RuleRow* RuleTable::row(std::string_view id) const { return with_id(rows, id); }

const Rule* RuleTable::rule(std::string_view id) const { return with_id(rules, id); }

std::vector<const RuleRow*> rows_under(const RuleTable& table, std::string_view id)
{
    std::vector<const RuleRow*> rows;
    gather(table, id, rows);
    return rows;
}

} // namespace glim
