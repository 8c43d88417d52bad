#include "judgement/light_rows.h"

#include "judgement/category.h"

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

const RuleRow* row_of_category(const RuleRow& row, LampFunction function, const Study& study)
{
    return asks_for_category(row.when) ? table_of(row, study)->row_of_category(function) : nullptr;
}

Multiplier multiplier_from(const GapToLamp& gap, const LampVerdict& measured)
{
    std::vector<double> possible;
    for (const std::string& word : may_follow(gap, measured))
        possible.push_back(number_in(word));
    const auto [least, most] = std::minmax_element(possible.begin(), possible.end());
    return possible.empty() ? Multiplier{} : Multiplier{*least, *most};
}

} // namespace glim
