#include "input/study_checks.h"

#include "input/shipped_tables.h"
#include "input/study_section.h"
#include "model/nearest_word.h"

#include <algorithm>
#include <map>

namespace glim {

namespace {

/// The tables read so far: place in Study::tables, or nothing for one that is not to be had.
using TablePlaces = std::map<std::string, std::optional<std::size_t>>;

std::optional<std::size_t> table_place(TableReader& table, const std::filesystem::path& folder,
                                       TablePlaces& places, Study& study)
{
    table.demand("table", "name the requirement table, such as table = \"own-example\"");
    const std::optional<std::string> name = table.text("table");
    if (!name)
        return std::nullopt;
    if (const auto known = places.find(*name); known != places.end())
        return known->second;
    try {
        study.tables.push_back(find_rule_table(*name, folder, table.place_of("table")));
        places[*name] = study.tables.size() - 1;
    } catch (const InputError& error) {
        table.complaints().add(error);
        places[*name] = std::nullopt;
    }
    return places[*name];
}

bool asks_for_width(const std::vector<Condition>& when)
{
    return std::any_of(when.begin(), when.end(), [](const Condition& condition) {
        return condition.quantity == Measured::overall_width;
    });
}

bool asks_for_width(const RuleRow& row)
{
    return asks_for_width(row.when) ||
           std::any_of(row.relaxations.begin(), row.relaxations.end(),
                       [](const Relaxation& relaxed) { return asks_for_width(relaxed.when); });
}

void check_width(TableReader& table, const RuleTable& rules, const std::string& rule,
                 const std::optional<Vehicle>& vehicle)
{
    if (!vehicle || vehicle->overall_width)
        return;
    for (const RuleRow* row : rows_under(rules, rule))
        if (asks_for_width(*row)) {
            table.complain("rule",
                           "the row `" + row->id +
                               "` depends on the overall width, which the "
                               "study does not give",
                           "write overall_width = (mm) in [vehicle], without mirrors and lamps");
            return;
        }
}

void check_rule(TableReader& table, const RuleTable& rules, const std::string& rule,
                const std::optional<Vehicle>& vehicle)
{
    if (rules.row(rule) || rules.rule(rule)) {
        check_width(table, rules, rule, vehicle);
        return;
    }
    std::vector<std::string> known;
    for (const Rule& each : rules.rules)
        known.push_back(each.id);
    for (const RuleRow& each : rules.rows)
        known.push_back(each.id);
    table.complain("rule", "the table `" + rules.name + "` has no rule or row `" + rule + "`",
                   did_you_mean(rule, known));
}

std::vector<LampId> read_asked_lamps(TableReader& table, const NameBook& lamp_names)
{
    const std::vector<Reference> one = table.texts("lamp");
    const std::vector<Reference> several = table.texts("lamps");
    if (table.has("lamp") == table.has("lamps"))
        table.complaints().add(table.place(),
                               table.words() + (table.has("lamp")
                                                    ? " has both `lamp` and `lamps`"
                                                    : " does not say which lamp it asks"),
                               "write either lamp = \"...\" or lamps = [\"...\", \"...\"]");
    if (table.holds_empty_list("lamps"))
        table.complain("lamps", table.words() + " asks no lamp", "name one at least");
    std::vector<LampId> lamps;
    for (const std::uint32_t i : lamp_names.find(one.empty() ? several : one, table.complaints()))
        lamps.push_back(LampId{i});
    return lamps;
}

} // namespace

void read_checks(TableReader& top, const std::optional<Vehicle>& vehicle,
                 const std::filesystem::path& folder, const NameBook& lamp_names, Study& study)
{
    top.demand("check", "nothing is asked; add a [[check]] with its table, rule and lamp");
    NameBook names("check");
    TablePlaces places;
    for (TableReader& table : top.tables("check", "[[check]]")) {
        Check check;
        check.name = names.read_name(table);
        const std::optional<std::size_t> rules = table_place(table, folder, places, study);
        table.demand("rule", "name a rule or a row of the table");
        const std::optional<std::string> rule = table.text("rule");
        if (rules && rule)
            check_rule(table, study.tables[*rules], *rule, vehicle);
        check.table = rules.value_or(0);
        check.rule = rule.value_or("");
        check.lamps = read_asked_lamps(table, lamp_names);
        finish_section(table, "check");
        study.checks.push_back(std::move(check));
    }
}

} // namespace glim
