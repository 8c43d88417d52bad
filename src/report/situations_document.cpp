#include "report/situations_document.h"

#include "model/asked_checks.h"
#include "model/rule.h"
#include "report/answer_words.h"
#include "report/rule_sources.h"
#include "report/typeset_document.h"
#include "words/look_words.h"
#include "words/row_words.h"
#include "words/situation_words.h"

#include <algorithm>

namespace glim {

namespace {

TableCell outcome_cell(Outcome outcome) { return {short_words(outcome), tone_of(outcome)}; }

Table check_table(const SituationFindings& found, const Study& study, std::size_t check)
{
    Table table{.caption = "What the check says where the vehicle stands otherwise or a part is "
                           "moved. Only the verdict is what the rule asks.",
                .columns = {{"Situation"},
                            {"Counts as"},
                            {"Centre above ground", ColumnKind::figures},
                            {"Outcome"},
                            {"Decided by"},
                            {"Figure"}},
                .rows = {}};
    for (std::size_t i = 0; i < found.situations.size(); ++i) {
        const Situation& s = found.situations[i];
        if (s.check != check || s.judges_moved_part())
            continue;
        const CheckFindings& there = found.at(i);
        table.rows.push_back({{situation_label(s, study)},
                              {std::string(standing_words(s))},
                              {height_words(there, found.found.looks)},
                              outcome_cell(there.outcome),
                              {there.deciding ? there.deciding_row().row.title : ""},
                              {deciding_figure_words(there, found.found.looks)}});
    }
    return table;
}

/// None where no row of the tables holds for moved parts.
Table moved_table(const SituationFindings& found, const Study& study)
{
    Table table{.caption =
                    "What the rules ask with a part moved, in every fixed position: verdicts. "
                    "All that hides the lamp there is counted, the cautious reading.",
                .columns = {{"Moved part"}, {"Lamp"}, {"Outcome"}, {"Figure"}, {"Row"}},
                .rows = {}};
    for (std::size_t i = 0; i < found.situations.size(); ++i) {
        if (!found.situations[i].judges_moved_part())
            continue;
        const RowFindings& row = found.at(i).rows.front();
        for (const LampVerdict& verdict : row.lamps) {
            const LampLook& look = found.found.looks[verdict.look];
            table.rows.push_back({{situation_label(found.situations[i], study)},
                                  {label_of(look)},
                                  outcome_cell(verdict.outcome),
                                  {verdict_figure_words(row, verdict, look)},
                                  {row.row.title}});
        }
    }
    return table;
}

/// The rows of all checks, and those that were asked of moved parts.
std::vector<const RuleRow*> rows_of(const SituationFindings& found, const Study& study)
{
    std::vector<const RuleRow*> rows = asked_rows(study, asked_checks(study));
    for (std::size_t i = 0; i < found.situations.size(); ++i) {
        if (!found.situations[i].judges_moved_part())
            continue;
        const Check& check = study.checks[found.situations[i].check];
        const RuleRow* row = study.tables[check.table].row(found.at(i).rule);
        if (std::find(rows.begin(), rows.end(), row) == rows.end())
            rows.push_back(row);
    }
    return rows;
}

Table states_table(const Study& study)
{
    Table table{.caption = "The states, as the study gives them.",
                .columns = {{"State"}, {"Made from"}},
                .rows = {}};
    for (const GroundState& ground : study.grounds)
        table.rows.push_back({{ground.state}, {ground_words(ground)}});
    return table;
}

} // namespace

Document situations_document(const SituationFindings& found, const Study& study,
                             std::vector<Figure> views, const std::vector<std::string>& names,
                             const std::string& command)
{
    std::vector<Block> blocks{Heading{1, "States and moved parts"}};
    blocks.push_back(Paragraph{.text = situations_sentence(found, study), .is_lead = true});
    blocks.push_back(Notice{std::string(caution)});
    const std::vector<const RuleRow*> rows = rows_of(found, study);
    blocks.push_back(Paragraph{provenance_note(rows)});
    if (Table moved = moved_table(found, study); !moved.rows.empty()) {
        blocks.push_back(Heading{1, "Moved parts"});
        blocks.push_back(std::move(moved));
    }
    if (!views.empty())
        blocks.push_back(Figures{std::move(views)});
    for (std::size_t c = 0; c < study.checks.size(); ++c) {
        blocks.push_back(Heading{1, study.checks[c].name});
        blocks.push_back(check_table(found, study, c));
    }
    blocks.push_back(Heading{1, "What this stands on"});
    if (std::vector<std::string> changes = changed_demands(found, study); !changes.empty())
        blocks.push_back(BulletList{std::move(changes)});
    blocks.push_back(states_table(study));
    blocks.push_back(Heading{2, "Figures of the rules"});
    blocks.push_back(rule_sources(rows));
    blocks.push_back(Terms{{{"Command", {command}}}});
    const std::string of = study.title.empty() ? "" : ": " + study.title;
    return typeset_document({"Lamp visibility: states" + of, "", std::move(blocks)}, names);
}

} // namespace glim
