#include "input/rule_rows.h"

#include "input/rule_fields.h"

#include <array>

namespace glim {

namespace {

struct MeasuredWord {
    Measured measured;
    std::string_view word;
};
constexpr std::array measured_words = {
    MeasuredWord{Measured::overall_width, "overall_width"},
    MeasuredWord{Measured::axis_height, "axis_height"},
};

struct PartsWord {
    ApprovedParts parts;
    std::string_view word;
};
constexpr std::array parts_words = {
    PartsWord{ApprovedParts::counted, "counted"},
    PartsWord{ApprovedParts::ignored, "ignored"},
};

struct PositiveWord {
    PositiveH positive;
    std::string_view word;
};
constexpr std::array positive_words = {
    PositiveWord{PositiveH::outboard, "outboard"},
    PositiveWord{PositiveH::inboard, "inboard"},
};

const std::vector<std::string> criterion_kinds = {"least_area"};

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

Condition read_condition(TableReader& table)
{
    Condition condition;
    table.demand("quantity", "write \"overall_width\" or \"axis_height\"");
    if (const auto* row = table.row_of("quantity", measured_words, &MeasuredWord::word))
        condition.quantity = row->measured;
    condition.at_least = table.length("at_least");
    condition.below = table.length("below");
    table.complain_of_unknown_keys();
    if (!table.has("at_least") && !table.has("below"))
        table.complaints().add(table.place(), table.words() + " sets no limit",
                               "write at_least = or below =, in mm");
    if (condition.at_least && condition.below && *condition.at_least >= *condition.below)
        table.complain("below", table.words() + " can never hold",
                       "`below` must exceed `at_least`");
    return condition;
}

std::vector<Condition> read_conditions(TableReader& table)
{
    std::vector<Condition> conditions;
    for (TableReader& one : table.tables("when", "`when` of " + table.words()))
        conditions.push_back(read_condition(one));
    return conditions;
}

Criterion read_criterion(TableReader& row)
{
    row.demand("criterion", "write criterion = { kind = \"least_area\", mm2 = ... }");
    std::optional<TableReader> table = row.table("criterion", "`criterion` of " + row.words());
    if (!table)
        return LeastArea{};
    table->demand("kind", "write kind = " + quoted_choice(criterion_kinds));
    table->choice("kind", criterion_kinds);
    table->demand("mm2", "write the least visible area in mm2");
    const std::optional<double> mm2 = table->number("mm2", "mm2");
    if (mm2 && *mm2 <= 0)
        table->complain("mm2", "the area of " + table->words() + " is not above 0",
                        "write the least visible area in mm2");
    table->complain_of_unknown_keys();
    return LeastArea{square_millimetres(mm2.value_or(0))};
}

std::vector<LampFunction> read_functions(TableReader& table)
{
    std::vector<std::string> known;
    known.reserve(function_words.size());
    for (const FunctionWord& row : function_words)
        known.emplace_back(row.key);
    std::vector<LampFunction> functions;
    for (const std::size_t i : table.choices("functions", known))
        functions.push_back(function_words[i].function);
    return functions;
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

} // namespace

RuleRow read_row(TableReader& table, const std::string& id)
{
    RuleRow row;
    row.id = id;
    row.title = table.text("title").value_or(id);
    row.citation = read_citation(table);
    row.functions = read_functions(table);
    if (const auto* axis = table.row_of("axis", axis_words, &AxisWord::word))
        row.axis = axis->axis;
    const auto* sense = table.row_of("positive_h", positive_words, &PositiveWord::word);
    const PositiveH positive = sense ? sense->positive : PositiveH::outboard;
    row.field = read_field(table, positive).value_or(Field{});
    row.when = read_conditions(table);
    for (TableReader& one : table.tables("relaxed", "`relaxed` of " + table.words()))
        row.relaxations.push_back(read_relaxation(one, positive));
    row.criterion = read_criterion(table);
    if (const auto* parts = table.row_of("approved_parts", parts_words, &PartsWord::word))
        row.approved_parts = parts->parts;
    if (row.approved_parts == ApprovedParts::ignored)
        table.complain("approved_parts",
                       "an area with the lamp's approved parts ignored is not measured",
                       "write \"counted\", which is the cautious reading, or leave the key out");
    read_answered_by(table, row);
    table.complain_of_unknown_keys();
    return row;
}

} // namespace glim
