#include "input/rule_rows.h"

#include "input/load_states.h"
#include "input/rule_conditions.h"
#include "input/rule_criteria.h"
#include "input/rule_fields.h"
#include "input/rule_points.h"
#include "model/nearest_word.h"
#include "model/rule_words.h"

#include <algorithm>
#include <array>

namespace glim {

namespace {

struct PositiveWord {
    PositiveH positive;
    std::string_view word;
};
constexpr std::array positive_words = {
    PositiveWord{PositiveH::outboard, "outboard"},
    PositiveWord{PositiveH::inboard, "inboard"},
};

Citation read_citation(TableReader& table)
{
    table.demand("provenance", "say how well the figure is known: \"read\" in the published text, "
                               "\"second-hand\" in a quotation of it, or from \"memory\"");
    table.demand("source", "say where the figure is from; without a source nobody can check it");
    Citation citation;
    if (const auto* row = table.row_of("provenance", provenance_words, &ProvenanceWord::key))
        citation.provenance = row->provenance;
    citation.source = table.text("source").value_or("");
    citation.clause = table.text("clause").value_or("");
    return citation;
}

void read_answered_by(TableReader& table, RuleRow& row)
{
    if (const auto* word = table.row_of("answered_by", answered_by_words, &AnsweredByWord::key))
        row.answered_by = word->answered_by;
    row.union_source = table.text("union_source").value_or("");
    if (row.answered_by == AnsweredBy::together && row.union_source.empty())
        table.complain("answered_by",
                       table.words() + " adds lamps up without saying what allows it",
                       "write union_source = \"...\", or answered_by = \"one_alone\"");
}

Relaxation read_relaxation(TableReader& table, PositiveH positive)
{
    Relaxation relaxation;
    table.demand("when",
                 "say when the smaller field holds: when = [{ quantity = ..., below = ... }]");
    relaxation.when = read_conditions(table);
    relaxation.field = read_field(table, positive).value_or(Field{});
    relaxation.citation = read_citation(table);
    table.complain_of_unknown_keys();
    return relaxation;
}

void read_directions(TableReader& table, RuleRow& row)
{
    const auto* sense = table.row_of("positive_h", positive_words, &PositiveWord::word);
    const PositiveH positive = sense ? sense->positive : PositiveH::outboard;
    auto* points = std::get_if<LightTable>(&row.criterion);
    if (points && positive == PositiveH::inboard)
        turn_about_vertical(*points);
    row.field = points ? field_of(*points) : read_field(table, positive).value_or(Field{});
    for (TableReader& one : table.tables("relaxed", "`relaxed` of " + table.words())) {
        row.relaxations.push_back(read_relaxation(one, positive));
        if (points)
            keep_points(table, row.field, row.relaxations.back().field);
    }
    if (const auto* parts =
            table.row_of("approved_parts", approved_parts_words, &ApprovedPartsWord::key))
        row.approved_parts = parts->parts;
    else if (!std::holds_alternative<LeastArea>(row.criterion))
        row.approved_parts = ApprovedParts::ignored;
}

constexpr std::array direction_keys = {"field",   "fields",     "points",
                                       "relaxed", "positive_h", "approved_parts"};

/// A row that measures where the lamp stands has no directions to look in, and a point table names
/// its own.
void complain_of_unknown_keys(TableReader& table, const Criterion& criterion)
{
    const std::vector<std::string> known(table.asked().begin(), table.asked().end());
    const bool of_points = std::holds_alternative<LightTable>(criterion);
    table.complain_of_unknown_keys([&](const std::string& key) -> std::string {
        const bool of_directions =
            std::find(direction_keys.begin(), direction_keys.end(), key) != direction_keys.end();
        if (!of_directions)
            return did_you_mean(key, known);
        return of_points ? "take it away: the points of the criterion are the directions"
                         : "take it away: this criterion measures where the lamp stands and "
                           "looks in no direction";
    });
}

/// Only a row that may end in proof due has something to prove.
void read_proof(TableReader& table, RuleRow& row)
{
    std::optional<TableReader> proof = table.table("proof_by", "`proof_by` of " + table.words());
    if (!proof)
        return;
    proof->demand("table", "name the table that asks for the light, such as \"un-r148\"");
    proof->demand("rule", "name a rule or a row of that table");
    row.proof = ProofOfLight{proof->text("table").value_or(""), proof->text("rule").value_or("")};
    proof->complain_of_unknown_keys();
    const auto* least = std::get_if<LeastArea>(&row.criterion);
    if (!std::holds_alternative<NoObstacle>(row.criterion) && !(least && least->proof_if_hidden))
        table.complain("proof_by", table.words() + " never asks for a proof",
                       "take `proof_by` away: it goes with \"no_obstacle\" and with "
                       "if_partly_hidden = \"proof_due\"");
}

void check_union(TableReader& table, const RuleRow& row)
{
    if (row.answered_by == AnsweredBy::together &&
        !std::holds_alternative<LeastArea>(row.criterion) && !asks_light(row.criterion))
        table.complain("answered_by", table.words() + " adds up what is neither area nor light",
                       "write answered_by = \"each\" or \"one_alone\"");
}

} // namespace

RuleRow read_row(TableReader& table, const std::string& id)
{
    RuleRow row;
    row.id = id;
    row.title = table.text("title").value_or(id);
    row.citation = read_citation(table);
    row.functions = read_functions(table, "functions");
    if (const auto* axis = table.row_of("axis", axis_words, &AxisWord::word))
        row.axis = axis->axis;
    row.criterion = read_criterion(table);
    if (asks_directions(row.criterion))
        read_directions(table, row);
    row.when = read_conditions(table);
    if (const auto state = table.choice("state", load_states))
        row.state = load_states[*state];
    row.of_moved_parts = table.truth("of_moved_parts").value_or(false);
    read_answered_by(table, row);
    check_union(table, row);
    if (asks_directions(row.criterion))
        read_proof(table, row);
    complain_of_unknown_keys(table, row.criterion);
    return row;
}

} // namespace glim
