#include "input/study_checks.h"

#include "input/load_states.h"
#include "input/shipped_tables.h"
#include "input/study_section.h"
#include "model/nearest_word.h"

#include <algorithm>
#include <map>

namespace glim {

namespace {

/// The tables read so far, by folder and name: place in Study::tables, or nothing for one that is
/// not to be had.
using TablePlaces = std::map<std::string, std::optional<std::size_t>>;

/// The table of that name, from the folder of the check.
std::optional<std::size_t> place_of_table(TableReader& table, const std::string& name,
                                          TablePlaces& places, Study& study)
{
    const std::filesystem::path folder = table.folder_of("table");
    const std::string key = (folder / name).string();
    if (const auto known = places.find(key); known != places.end())
        return known->second;
    try {
        study.tables.push_back(find_rule_table(name, folder, table.place_of("table")));
        places[key] = study.tables.size() - 1;
    } catch (const InputError& error) {
        table.complaints().add(error);
        places[key] = std::nullopt;
    }
    return places[key];
}

std::optional<std::size_t> table_place(TableReader& table, TablePlaces& places, Study& study)
{
    table.demand("table", "name the requirement table, such as table = \"own-example\"");
    const std::optional<std::string> name = table.text("table");
    return name ? place_of_table(table, *name, places, study) : std::nullopt;
}

/// What a row or a rule needs to know of the vehicle or of a lamp.
bool asks_for(Measured quantity, const std::vector<Condition>& when)
{
    return std::any_of(when.begin(), when.end(),
                       [&](const Condition& c) { return c.quantity == quantity; });
}

bool asks_for(Measured quantity, const RuleRow& row)
{
    return asks_for(quantity, row.when) ||
           std::any_of(row.relaxations.begin(), row.relaxations.end(),
                       [&](const Relaxation& r) { return asks_for(quantity, r.when); });
}

/// The id of the first row or rule that asks for it.
std::optional<std::string> who_asks_for(Measured quantity, const RuleTable& rules,
                                        const std::string& rule)
{
    for (const RuleRow* row : rows_under(rules, rule))
        if (asks_for(quantity, *row))
            return row->id;
    for (const Rule* each : rules_under(rules, rule))
        if (asks_for(quantity, each->when))
            return each->id;
    return std::nullopt;
}

std::optional<std::string> who_asks_for_edge(const RuleTable& rules, const std::string& rule)
{
    for (const RuleRow* row : rows_under(rules, rule))
        if (std::holds_alternative<ToOuterEdge>(row->criterion))
            return row->id;
    return std::nullopt;
}

void check_vehicle(TableReader& table, const RuleTable& rules, const std::string& rule,
                   const Vehicle& vehicle)
{
    const auto complain = [&](const std::string& who, const std::string& what,
                              const std::string& remedy) {
        table.complain("rule",
                       "`" + who + "` depends on the " + what + ", which the study does not give",
                       remedy);
    };
    if (!vehicle.overall_width)
        if (const auto who = who_asks_for(Measured::overall_width, rules, rule))
            complain(*who, "overall width",
                     "write overall_width = (mm) in [vehicle], without mirrors and lamps");
    if (vehicle.category.empty())
        if (const auto who = who_asks_for(Measured::vehicle_category, rules, rule))
            complain(*who, "vehicle category", "write category = \"M1\" or the like in [vehicle]");
    if (!vehicle.extreme_outer_edge && !vehicle.overall_width)
        if (const auto who = who_asks_for_edge(rules, rule))
            complain(*who, "extreme outer edge",
                     "write extreme_outer_edge = (mm from the median plane) in [vehicle]");
}

/// The categories that rows for lamps of this function know.
std::vector<std::string> known_categories(const RuleTable& rules, const std::string& rule,
                                          LampFunction function)
{
    std::vector<std::string> known;
    for (const RuleRow* row : rows_under(rules, rule)) {
        const bool speaks = std::find(row->functions.begin(), row->functions.end(), function) !=
                            row->functions.end();
        for (const Condition& c : row->when)
            if (speaks && c.quantity == Measured::lamp_category)
                known.insert(known.end(), c.one_of.begin(), c.one_of.end());
    }
    return known;
}

/// The other lamps to which a gap gives the category, where the table has such a row.
const std::vector<LampFunction>* gap_ends(const RuleTable& rules, LampFunction function)
{
    const RuleRow* row = rules.row_of_category(function);
    return row ? &std::get<GapToLamp>(row->criterion).to : nullptr;
}

bool has_lamp_of(const Study& study, const std::vector<LampFunction>& functions)
{
    return std::any_of(study.lamps.begin(), study.lamps.end(), [&](const Lamp& lamp) {
        return std::find(functions.begin(), functions.end(), lamp.function) != functions.end();
    });
}

std::string listed_functions(const std::vector<LampFunction>& functions)
{
    std::vector<std::string> keys;
    for (const FunctionWord& w : function_words)
        if (std::find(functions.begin(), functions.end(), w.function) != functions.end())
            keys.emplace_back(w.key);
    return listed(keys, "or");
}

/// A lamp of no category that the rows know would be passed over by all of them, which is not met.
/// One that declares none may have it from a gap that can be measured.
void check_lamp_categories(TableReader& table, const RuleTable& rules, const Study& study,
                           const Check& check)
{
    for (const LampId id : check.lamps) {
        const Lamp& lamp = study.lamps[id];
        const std::vector<std::string> known = known_categories(rules, check.rule, lamp.function);
        if (known.empty() || std::find(known.begin(), known.end(), lamp.category) != known.end())
            continue;
        const std::vector<LampFunction>* ends = gap_ends(rules, lamp.function);
        if (lamp.category.empty() && ends && has_lamp_of(study, *ends))
            continue;
        const std::string or_lamp =
            lamp.category.empty() && ends
                ? ", or add the " + listed_functions(*ends) + " lamp that its gap is measured to"
                : "";
        table.complain("rule",
                       "the rule `" + check.rule + "` depends on the category of lamp `" +
                           lamp.name + "`, which " +
                           (lamp.category.empty() ? "the study does not give"
                                                  : "is \"" + lamp.category + "\""),
                       "write category = " + quoted_choice(known) + " in its [[lamp]]" + or_lamp);
    }
}

/// Each must be a part of a choice below the rule, and of each choice one at most.
void check_options(TableReader& table, const RuleTable& rules, const std::string& rule,
                   const std::vector<Reference>& options)
{
    std::vector<std::string> known;
    for (const Rule* each : rules_under(rules, rule)) {
        if (each->combine != Combine::choose_one)
            continue;
        known.insert(known.end(), each->parts.begin(), each->parts.end());
        const auto chosen =
            std::count_if(options.begin(), options.end(), [&](const Reference& option) {
                return std::find(each->parts.begin(), each->parts.end(), option.name) !=
                       each->parts.end();
            });
        if (chosen > 1)
            table.complain("option",
                           table.words() + " chooses twice where `" + each->id +
                               "` leaves one choice",
                           "keep one of " + listed(each->parts));
    }
    for (const Reference& option : options)
        if (std::find(known.begin(), known.end(), option.name) == known.end())
            table.complaints().add(option.place,
                                   "the rule `" + rule + "` leaves no choice `" + option.name + "`",
                                   known.empty() ? "take `option` away: the rule leaves none"
                                                 : did_you_mean(option.name, known));
}

void check_rule(TableReader& table, const RuleTable& rules, const std::string& rule,
                const std::optional<Vehicle>& vehicle)
{
    if (rules.row(rule) || rules.rule(rule)) {
        if (vehicle)
            check_vehicle(table, rules, rule, *vehicle);
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

/// Reads the tables of proofs that rows below the rule ask for, where there is light to prove
/// anything with; the categories of lamps with light must be known to them.
void read_proof_tables(TableReader& table, const Check& check, TablePlaces& places, Study& study)
{
    const auto has_light = [&](LampId lamp) { return study.light_of(lamp) != nullptr; };
    if (std::none_of(check.lamps.begin(), check.lamps.end(), has_light))
        return;
    Check proof{.name = check.name, .table = check.table, .rule = {}, .lamps = {}};
    std::copy_if(check.lamps.begin(), check.lamps.end(), std::back_inserter(proof.lamps),
                 has_light);
    std::vector<ProofOfLight> asked;
    for (const RuleRow* row : rows_under(study.tables[check.table], check.rule))
        if (row->proof)
            asked.push_back(*row->proof);
    for (const ProofOfLight& each : asked) {
        const auto place = place_of_table(table, each.table, places, study);
        if (!place)
            continue;
        proof.rule = each.rule;
        const RuleTable& rules = study.tables[*place];
        if (rules.row(each.rule) || rules.rule(each.rule))
            check_lamp_categories(table, rules, study, proof);
        else
            table.complain("rule",
                           "the table `" + each.table + "` has no rule or row `" + each.rule +
                               "`, by which `" + check.rule + "` asks for proof",
                           "correct `proof_by` in the table `" + study.tables[check.table].name +
                               "`");
    }
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

/// In which state of load; the study must know the ground in it.
void read_state(TableReader& table, const Study& study, Check& check)
{
    const std::optional<std::string> state = table.text("state");
    if (!state)
        return;
    // No nearest word here: "laden" is nearer to "unladen" than to what was meant.
    if (std::find(load_states.begin(), load_states.end(), *state) == load_states.end())
        return table.complain("state", "`state` of " + table.words() + " is \"" + *state + "\"",
                              "write " + quoted_choice(load_states));
    check.state = *state;
    if (!study.ground_in(check.state))
        table.complain("state",
                       "the study does not say where the ground is at " + check.state + " load",
                       "add [ground." + check.state + "], or take `state` away");
}

} // namespace

void demand_checks(TableReader& top)
{
    const std::string remedy = "nothing is asked; add a [[check]] with its table, rule and lamp";
    if (top.holds_empty_list("check"))
        top.complain("check", "every [[check]] of " + top.words() + " is taken away", remedy);
    else
        top.demand("check", remedy);
}

void read_checks(TableReader& top, const std::optional<Vehicle>& vehicle,
                 const NameBook& lamp_names, Study& study)
{
    NameBook names("check");
    TablePlaces places;
    for (TableReader& table : top.tables("check", "[[check]]")) {
        Check check;
        check.name = names.read_name(table);
        const std::optional<std::size_t> rules = table_place(table, places, study);
        table.demand("rule", "name a rule or a row of the table");
        const std::optional<std::string> rule = table.text("rule");
        if (rules && rule)
            check_rule(table, study.tables[*rules], *rule, vehicle);
        check.table = rules.value_or(0);
        check.rule = rule.value_or("");
        check.lamps = read_asked_lamps(table, lamp_names);
        read_state(table, study, check);
        const std::vector<Reference> options = table.texts("option");
        if (rules && rule)
            check_options(table, study.tables[*rules], *rule, options);
        for (const Reference& option : options)
            check.options.push_back(option.name);
        if (rules && rule) {
            check_lamp_categories(table, study.tables[*rules], study, check);
            read_proof_tables(table, check, places, study);
        }
        finish_section(table, "check");
        study.checks.push_back(std::move(check));
    }
}

} // namespace glim
