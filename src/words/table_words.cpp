#include "words/table_words.h"

#include "model/nearest_word.h"
#include "words/bearing_words.h"
#include "words/citation_words.h"
#include "words/criterion_words.h"
#include "words/keys.h"
#include "words/light_words.h"
#include "words/numbers.h"

#include <algorithm>

namespace glim {

namespace {

constexpr int indent = 2;

std::string regulation_words(const RuleTable& table)
{
    return table.edition.empty() ? table.regulation : table.regulation + ", " + table.edition;
}

std::string answered_words(const RuleRow& row)
{
    switch (row.answered_by) {
    case AnsweredBy::each:
        return "each lamp that is asked";
    case AnsweredBy::together:
        return "the lamps together (" + row.union_source + ")";
    case AnsweredBy::one_alone:
        break;
    }
    return "one lamp alone";
}

std::string approved_words(ApprovedParts approved_parts)
{
    return approved_parts == ApprovedParts::counted ? "are in the way like any other"
                                                    : "are not held against it";
}

/// "H 5, V 0 157.5 cd; ..."
std::string points_words(const std::vector<LightPoint>& points)
{
    std::string words;
    for (const LightPoint& p : points)
        words += (words.empty() ? "" : "; ") + bearing_figures(p.toward) + " " +
                 intensity_words(p.least);
    return words;
}

void add_points(std::vector<Labelled>& entries, const LightTable& table)
{
    if (!table.points.empty())
        entries.push_back({"points", points_words(table.points)});
    for (const LightGroup& group : table.groups)
        entries.push_back({"group " + group.name, intensity_words(group.total) +
                                                      " together: " + points_words(group.points)});
}

/// Of a table of light a relaxed field is what is left of its points.
std::string relaxed_words(const RuleRow& row, const Field& relaxed, const BearingSpeech& speech)
{
    if (std::holds_alternative<LightTable>(row.criterion))
        return std::to_string(relaxed.rectangles.size()) + " of the " +
               counted(row.field.rectangles.size(), "point");
    return field_words(relaxed, speech);
}

std::vector<Labelled> row_entries(const RuleRow& row)
{
    const BearingSpeech speech{row.axis, Side::left};
    std::vector<Labelled> entries{{"asks", criterion_words(row.criterion)}};
    const auto* light = std::get_if<LightTable>(&row.criterion);
    if (light)
        add_points(entries, *light);
    else if (asks_directions(row.criterion))
        entries.push_back({"field", field_words(row.field, speech)});
    entries.push_back({"axis", std::string(key_of(row.axis))});
    entries.push_back({"lamps", functions_words(row.functions)});
    entries.push_back({"answered by", answered_words(row)});
    if (asks_directions(row.criterion))
        entries.push_back(
            {"own parts", "those approved with the lamp " + approved_words(row.approved_parts)});
    if (!row.state.empty())
        entries.push_back({"ground", "at " + row.state + " load"});
    if (row.of_moved_parts)
        entries.push_back({"holds", "in every fixed position of a movable part"});
    if (!row.when.empty())
        entries.push_back({"only where", conditions_words(row.when)});
    for (const Relaxation& r : row.relaxations) {
        entries.push_back({"relaxed to", relaxed_words(row, r.field, speech) + ", where " +
                                             conditions_words(r.when)});
        entries.push_back({"", citation_words(r.citation)});
    }
    if (row.proof)
        entries.push_back({"proof by", row.proof->rule + " of " + row.proof->table});
    entries.push_back({"source", citation_words(row.citation)});
    return entries;
}

std::string rule_words(const Rule& rule)
{
    std::string words = rule.title + (rule.title.empty() ? "" : ": ") +
                        std::string(words_of(rule.combine)) + " " + listed(rule.parts);
    if (!rule.of_other_lamps.empty())
        words += ", asked of another lamp on the same side (" +
                 functions_words(rule.of_other_lamps) + ")";
    if (!rule.when.empty())
        words += ", only where " + conditions_words(rule.when);
    return words;
}

std::vector<Labelled> rule_entries(const RuleTable& table)
{
    std::vector<Labelled> entries;
    for (const Rule& rule : table.rules)
        entries.push_back({rule.id, rule_words(rule)});
    return entries;
}

/// "6 rows: 2 read in the source named, 4 from memory: not verified"
std::string provenance_counts(const RuleTable& table)
{
    std::string words;
    for (const ProvenanceWord& word : provenance_words) {
        const auto count =
            std::count_if(table.rows.begin(), table.rows.end(), [&](const RuleRow& row) {
                return row.citation.provenance == word.provenance;
            });
        if (count > 0)
            words +=
                (words.empty() ? "" : ", ") + std::to_string(count) + " " + std::string(word.words);
    }
    return counted(table.rows.size(), "row") + ": " + words;
}

} // namespace

std::string tables_words(const std::vector<RuleTable>& tables, const TextStyle& style)
{
    std::string text;
    for (const RuleTable& table : tables)
        text += harmless(table.name) + "\n" +
                labelled_block({{"regulation", regulation_words(table)},
                                {"holds", table.title},
                                {"figures", provenance_counts(table)}},
                               indent, style) +
                "\n";
    return text + wrapped(caution, style.columns) + "\n";
}

std::string table_words(const RuleTable& table, const TextStyle& style)
{
    std::string text = wrapped(table.name + ": " + regulation_words(table), style.columns) + "\n";
    if (!table.title.empty())
        text += wrapped(table.title, style.columns) + "\n";
    if (!table.rules.empty())
        text += "\nRules\n" + labelled_block(rule_entries(table), indent, style);
    for (const RuleRow& row : table.rows)
        text += "\n" + wrapped("Row " + row.id + ": " + row.title, style.columns) + "\n" +
                labelled_block(row_entries(row), indent, style);
    return text + "\n" + wrapped(caution, style.columns) + "\n";
}

} // namespace glim
