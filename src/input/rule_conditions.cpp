#include "input/rule_conditions.h"

#include "model/rule_words.h"

#include <algorithm>

namespace glim {

namespace {

void check_words(TableReader& table, const Condition& condition)
{
    if (condition.one_of.empty() == condition.none_of.empty())
        table.complaints().add(table.place(), table.words() + " does not list words in one way",
                               "write one_of = [\"...\"] or none_of = [\"...\"]");
    const bool yes_or_no = condition.quantity == Measured::optional_lamp;
    for (const std::string& word : condition.one_of)
        if (yes_or_no && word != "yes" && word != "no")
            table.complain("one_of", table.words() + " holds \"" + word + "\"",
                           "write \"yes\" or \"no\"");
}

void check_limits(TableReader& table, const Condition& condition)
{
    if (!table.has("at_least") && !table.has("below"))
        table.complaints().add(table.place(), table.words() + " sets no limit",
                               "write at_least = or below =, in mm");
    if (condition.at_least && condition.below && *condition.at_least >= *condition.below)
        table.complain("below", table.words() + " can never hold",
                       "`below` must exceed `at_least`");
}

std::vector<std::string> words(TableReader& table, std::string_view key)
{
    const std::vector<Reference> references = table.texts(key);
    std::vector<std::string> all(references.size());
    std::transform(references.begin(), references.end(), all.begin(),
                   [](const Reference& word) { return word.name; });
    return all;
}

Condition read_condition(TableReader& table)
{
    Condition condition;
    std::vector<std::string> known;
    known.reserve(quantity_words.size());
    for (const MeasuredWord& word : quantity_words)
        known.emplace_back(word.key);
    table.demand("quantity", "write quantity = " + quoted_choice(known));
    const auto* row = table.row_of("quantity", quantity_words, &MeasuredWord::key);
    if (row)
        condition.quantity = row->measured;
    const bool length = is_length(condition.quantity);
    if (!row || length) {
        condition.at_least = table.length("at_least");
        condition.below = table.length("below");
    }
    if (!row || !length) {
        condition.one_of = words(table, "one_of");
        condition.none_of = words(table, "none_of");
    }
    table.complain_of_unknown_keys();
    if (row && length)
        check_limits(table, condition);
    else if (row)
        check_words(table, condition);
    return condition;
}

} // namespace

std::vector<Condition> read_conditions(TableReader& table)
{
    std::vector<Condition> conditions;
    for (TableReader& one : table.tables("when", "`when` of " + table.words()))
        conditions.push_back(read_condition(one));
    return conditions;
}

std::vector<Condition> read_vehicle_conditions(TableReader& table)
{
    std::vector<Condition> conditions = read_conditions(table);
    const bool of_lamp = std::any_of(conditions.begin(), conditions.end(), [](const Condition& c) {
        return c.quantity != Measured::overall_width && c.quantity != Measured::vehicle_category;
    });
    if (of_lamp)
        table.complain("when", table.words() + " depends on a lamp, and a rule may ask several",
                       "write the condition into its rows; here only overall_width and "
                       "vehicle_category can stand");
    return conditions;
}

std::vector<LampFunction> read_functions(TableReader& table, std::string_view key)
{
    std::vector<std::string> known;
    known.reserve(function_words.size());
    for (const FunctionWord& row : function_words)
        known.emplace_back(row.key);
    std::vector<LampFunction> functions;
    for (const std::size_t i : table.choices(key, known))
        functions.push_back(function_words[i].function);
    return functions;
}

} // namespace glim
