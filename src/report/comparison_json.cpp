#include "report/comparison_json.h"

#include "model/rule.h"
#include "report/csv.h"
#include "report/rule_sources.h"
#include "words/keys.h"
#include "words/numbers.h"
#include "words/rule_source_words.h"

#include <algorithm>

namespace glim {

namespace {

Json array_of(const std::vector<std::string>& names)
{
    return Json::Array(names.begin(), names.end());
}

Json json_of(const Range& range) { return Json::Array{range.low, range.likely, range.high}; }

Json json_of(const std::optional<Range>& range) { return range ? json_of(*range) : Json(); }

Json json_of(const std::optional<double>& number) { return number ? Json(*number) : Json(); }

Json json_of(const Point& p) { return Json::Array{p.x(), p.y(), p.z()}; }

Json entry_keys(const std::vector<CostEntry>& entries)
{
    Json::Array keys;
    for (const CostEntry entry : entries)
        keys.push_back(cost_entry_words[static_cast<std::size_t>(entry)].key);
    return keys;
}

Json json_of(const CheckFindings& check)
{
    const bool decided =
        check.deciding && check.deciding_verdict().outcome != Outcome::not_applicable;
    const bool has_area = decided && !check.deciding_verdict().directions.empty();
    return Json::Object{
        {"name", check.name},
        {"outcome", key_of(check.outcome)},
        {"margin_mm2", has_area ? Json(in_mm2(check.deciding_verdict().margin)) : Json()},
        {"relative_margin", decided ? Json(check.deciding_verdict().relative_margin) : Json()}};
}

Json json_of(const SurfaceChange& change)
{
    return Json::Object{{"surface", change.surface},
                        {"deepest_mm", in_mm(change.deepest)},
                        {"at_mm", json_of(change.where)},
                        {"area_mm2", in_mm2(change.area)},
                        {"volume_mm3", change.volume}};
}

Json json_of(const CostSum& cost)
{
    Json::Array lines;
    for (const CostLine& line : cost.lines)
        lines.push_back(
            Json::Object{{"entry", cost_entry_words[static_cast<std::size_t>(line.entry)].key},
                         {"given", json_of(line.given)},
                         {"rate", json_of(line.rate)},
                         {"money", json_of(line.money)}});
    return Json::Object{{"entries", std::move(lines)},
                        {"missing", entry_keys(cost.missing)},
                        {"a_vehicle", json_of(cost.a_vehicle)},
                        {"once", json_of(cost.once)},
                        {"vehicles", json_of(cost.vehicles)},
                        {"programme", json_of(cost.programme)},
                        {"all_in_a_vehicle", json_of(cost.all_in)}};
}

Json json_of(const JudgedOption& option)
{
    Json::Array checks, changes;
    for (const CheckFindings& check : option.findings.checks)
        checks.push_back(json_of(check));
    for (const SurfaceChange& change : option.changes)
        changes.push_back(json_of(change));
    return Json::Object{{"name", option.name},
                        {"study", option.file},
                        {"checks", std::move(checks)},
                        {"lamps_added", array_of(option.lamps_added)},
                        {"lamps_gone", array_of(option.lamps_gone)},
                        {"surfaces_added", array_of(option.surfaces_added)},
                        {"surfaces_gone", array_of(option.surfaces_gone)},
                        {"surfaces_moved", std::move(changes)},
                        {"cost", json_of(option.cost)}};
}

Json json_of(const BreakEvenBetween& between, const Comparison& comparison)
{
    const BreakEven& even = between.even;
    const std::string& one = comparison.options[between.one].name;
    const std::string& other = comparison.options[between.other].name;
    return Json::Object{{"one", one},
                        {"other", other},
                        {"vehicles", json_of(even.vehicles)},
                        {"least", json_of(even.least)},
                        {"most", json_of(even.most)},
                        {"at_all_costs_in_the_ranges", even.always},
                        {"cheaper_below", even.alike ? Json() : Json(even.one_below ? one : other)},
                        {"one_missing", entry_keys(between.one_missing)},
                        {"other_missing", entry_keys(between.other_missing)}};
}

std::string cell(const std::optional<Range>& money)
{
    return money ? rounded(money->likely, 2) : "";
}

std::string joined(const std::vector<std::string>& names)
{
    std::string text;
    for (const std::string& name : names)
        text += (text.empty() ? "" : "; ") + name;
    return text;
}

std::vector<std::string> csv_heads(const Comparison& comparison)
{
    std::vector<std::string> heads{"option", "study"};
    for (const std::string& check : comparison.checks) {
        heads.push_back(check + ": outcome");
        heads.push_back(check + ": relative margin");
    }
    heads.insert(heads.end(), {"lamps added", "surfaces added", "deepest mm", "area mm2",
                               "volume mm3", "a vehicle", "once", "programme", "not known"});
    return heads;
}

std::vector<std::string> csv_cells(const JudgedOption& option, const Comparison& comparison)
{
    std::vector<std::string> cells{option.name, option.file};
    for (const std::string& name : comparison.checks) {
        const CheckFindings* check = answer_of(option, name);
        cells.emplace_back(check ? key_of(check->outcome) : "");
        cells.push_back(
            check && check->deciding ? rounded(check->deciding_verdict().relative_margin, 6) : "");
    }
    Length deepest;
    Area area;
    double volume = 0;
    for (const SurfaceChange& change : option.changes) {
        deepest = std::max(deepest, change.deepest);
        area += change.area;
        volume += change.volume;
    }
    std::vector<std::string> missing;
    for (const CostEntry entry : option.cost.missing)
        missing.emplace_back(cost_entry_words[static_cast<std::size_t>(entry)].key);
    const bool priced = !comparison.programme.currency.empty();
    for (const std::string& text :
         {joined(option.lamps_added), joined(option.surfaces_added), csv_number(deepest),
          csv_number(area), rounded(volume, 3), priced ? cell(option.cost.a_vehicle) : "",
          priced ? cell(option.cost.once) : "", priced ? cell(option.cost.programme) : "",
          joined(missing)})
        cells.push_back(text);
    return cells;
}

} // namespace

Json comparison_json(const Comparison& comparison)
{
    Json::Array options, evens;
    for (const JudgedOption& option : comparison.options)
        options.push_back(json_of(option));
    for (const BreakEvenBetween& between : comparison.break_evens)
        evens.push_back(json_of(between, comparison));
    const Programme& programme = comparison.programme;
    return Json::Object{
        {"caution", caution},
        {"rule_sources", rule_sources_json(rows_in(comparison.options.front().findings))},
        {"currency", programme.currency},
        {"volume_a_year", json_of(programme.volume)},
        {"years", json_of(programme.years)},
        {"options", std::move(options)},
        {"break_evens", std::move(evens)}};
}

std::string comparison_csv(const Comparison& comparison)
{
    std::string text = csv_row(csv_heads(comparison));
    for (const JudgedOption& option : comparison.options)
        text += csv_row(csv_cells(option, comparison));
    return text;
}

} // namespace glim
