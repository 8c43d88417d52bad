#include "report/rows_table.h"

#include "report/answer_words.h"
#include "words/keys.h"
#include "words/look_words.h"
#include "words/name_list.h"
#include "words/row_words.h"

#include <algorithm>
#include <utility>

namespace glim {

namespace {

TableCell outcome_cell(const CheckFindings& check, const LampVerdict& verdict)
{
    const bool decides = check.deciding && &check.deciding_verdict() == &verdict;
    return {short_words(verdict.outcome) + (decides ? " (decides)" : ""), tone_of(verdict.outcome)};
}

/// Long criteria in the few words that a narrow column has room for; the lamp's own section has
/// them in full.
std::string asks_briefly(const RowFindings& row)
{
    if (!std::holds_alternative<NoObstacle>(row.row.criterion))
        return needed_words(row);
    return std::string("nothing hidden, else proof due") + (row.not_chosen ? "; not chosen" : "");
}

/// `is_first`: of the row's lamps; the others are asked the same.
std::vector<TableCell> table_row(const Findings& findings, const CheckFindings& check,
                                 const RowFindings& row, const LampVerdict& verdict, bool is_first)
{
    const LampLook& look = findings.looks[verdict.look];
    return {{row.row.id},
            {label_of(look)},
            {is_first ? asks_briefly(row) : "the same"},
            {figure_words(row, verdict)},
            {margin_words(verdict)},
            {place_words(verdict, look)},
            outcome_cell(check, verdict),
            {std::string(key_of(row.row.citation.provenance))}};
}

/// The rows passed over for one reason; of some lamps only, these lamps.
struct PassedOver {
    Because because;
    std::vector<std::string> rows;
};

void pass_over(std::vector<PassedOver>& all, Because because, std::string row)
{
    auto found = std::find_if(all.begin(), all.end(),
                              [&](const PassedOver& p) { return p.because == because; });
    if (found == all.end())
        found = all.insert(all.end(), {because, {}});
    found->rows.push_back(std::move(row));
}

/// One entry for a row that is passed over of all its lamps for one reason, else one a lamp.
void add_passed_over(const Findings& findings, const RowFindings& row, std::vector<PassedOver>& all)
{
    const std::vector<const LampVerdict*> verdicts = verdicts_of(row);
    const bool of_all = std::all_of(verdicts.begin(), verdicts.end(), [&](const LampVerdict* v) {
        return !applies(*v) && v->because == verdicts.front()->because;
    });
    if (of_all && !verdicts.empty())
        return pass_over(all, verdicts.front()->because, row.row.id);
    for (const LampVerdict* v : verdicts)
        if (!applies(*v))
            pass_over(all, v->because, row.row.id + " of " + label_of(findings.looks[v->look]));
}

} // namespace

Table rows_table(const Findings& findings, const CheckFindings& check)
{
    Table table{"All rows that apply. The last column tells how well the row's own figures are "
                "known.",
                {{"Row"},
                 {"Lamp"},
                 {"Asks"},
                 {"Found", ColumnKind::figures},
                 {"Margin", ColumnKind::figures},
                 {"Where", ColumnKind::code},
                 {"Outcome"},
                 {"Provenance"}},
                {}};
    for (const RowFindings& row : check.rows) {
        bool is_first = true;
        for (const LampVerdict* verdict : verdicts_of(row))
            if (applies(*verdict))
                table.rows.push_back(
                    table_row(findings, check, row, *verdict, std::exchange(is_first, false)));
    }
    return table;
}

std::vector<std::string> rows_not_asked(const Findings& findings, const CheckFindings& check)
{
    std::vector<PassedOver> all;
    for (const RowFindings& row : check.rows)
        add_passed_over(findings, row, all);
    std::vector<std::string> items;
    for (const PassedOver& passed : all)
        items.push_back("Not asked, because " + std::string(words_of(passed.because)) + ": " +
                        name_list(passed.rows) + ".");
    return items;
}

} // namespace glim
