#include "judgement/light_rows.h"

#include <algorithm>
#include <charconv>

namespace glim {

namespace {

/// Requires: a number, as the reader of tables asks it.
double number_in(const std::string& word)
{
    double number = 1;
    std::from_chars(word.data(), word.data() + word.size(), number);
    return number;
}

const RuleTable* table_of(const RuleRow& row, const Study& study)
{
    for (const RuleTable& table : study.tables)
        for (const RuleRow& each : table.rows)
            if (&each == &row)
                return &table;
    return nullptr;
}

} // namespace

std::vector<const RuleRow*> proof_rows(const RuleRow& row, const Study& study)
{
    const RuleTable* table = row.proof ? study.table_named(row.proof->table) : nullptr;
    return table ? rows_under(*table, row.proof->rule) : std::vector<const RuleRow*>{};
}

const RuleRow* row_of_multiplier(const RuleRow& row, const Study& study)
{
    const auto* points = std::get_if<LightTable>(&row.criterion);
    if (!points || points->multiplied_by.empty())
        return nullptr;
    return table_of(row, study)->row(points->multiplied_by);
}

Multiplier multiplier_from(const GapToLamp& gap, const std::string& follows)
{
    if (!follows.empty())
        return {number_in(follows), number_in(follows)};
    std::vector<double> all;
    all.reserve(gap.steps.size());
    for (const GapStep& step : gap.steps)
        all.push_back(number_in(step.follows));
    const auto [least, most] = std::minmax_element(all.begin(), all.end());
    return all.empty() ? Multiplier{} : Multiplier{*least, *most};
}

} // namespace glim
