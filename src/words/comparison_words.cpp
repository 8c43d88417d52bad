#include "words/comparison_words.h"

#include "model/rule.h"
#include "words/cost_words.h"
#include "words/look_words.h"
#include "words/money_words.h"
#include "words/name_list.h"
#include "words/numbers.h"
#include "words/row_words.h"
#include "words/rule_source_words.h"

#include <algorithm>

namespace glim {

namespace {

constexpr double mm2_in_cm2 = 100, mm3_in_cm3 = 1000;

std::string point_words(const Point& p)
{
    return "(" + rounded(p.x(), 0) + ", " + rounded(p.y(), 0) + ", " + rounded(p.z(), 0) + ")";
}

bool is_priced(const Comparison& comparison) { return !comparison.programme.currency.empty(); }

/// The farthest that any surface has moved; nothing where none has.
std::string deepest_words(const JudgedOption& option)
{
    Length deepest;
    for (const SurfaceChange& change : option.changes)
        deepest = std::max(deepest, change.deepest);
    return option.changes.empty() ? "-" : rounded(in_mm(deepest), 2) + " mm";
}

std::string with_star(const std::string& sum, const CostSum& cost)
{
    return cost.complete() ? sum : sum + " *";
}

std::vector<std::string> row_of(const JudgedOption& option, const Comparison& comparison)
{
    std::vector<std::string> cells{option.name};
    for (const std::string& check : comparison.checks)
        cells.push_back(answer_in_short(option, check));
    cells.push_back(std::to_string(option.lamps_added.size()));
    cells.push_back(deepest_words(option));
    if (is_priced(comparison)) {
        cells.push_back(with_star(grouped(option.cost.a_vehicle.likely), option.cost));
        cells.push_back(with_star(grouped(option.cost.once.likely), option.cost));
        cells.push_back(option.cost.programme
                            ? with_star(grouped(option.cost.programme->likely), option.cost)
                            : "-");
    }
    return cells;
}

/// Checks stand as letters over their columns, and are named below: names are long.
std::string letter(std::size_t check)
{
    return std::string(1, static_cast<char>('A' + check % 26));
}

std::vector<std::string> heads(const Comparison& comparison)
{
    std::vector<std::string> cells{"option"};
    for (std::size_t i = 0; i < comparison.checks.size(); ++i)
        cells.push_back(letter(i));
    cells.emplace_back("lamps added");
    cells.emplace_back("surface moved");
    if (is_priced(comparison))
        cells.insert(cells.end(), {"a vehicle", "once", "programme"});
    return cells;
}

std::string side_by_side(const Comparison& comparison, const TextStyle& style)
{
    std::vector<std::vector<std::string>> cells{heads(comparison)};
    bool starred = false;
    for (const JudgedOption& option : comparison.options) {
        cells.push_back(row_of(option, comparison));
        starred = starred || (is_priced(comparison) && !option.cost.complete());
    }
    std::vector<std::size_t> right;
    for (std::size_t i = comparison.checks.size() + 1; i < cells.front().size(); ++i)
        right.push_back(i);
    std::string text;
    for (const std::string& line : aligned_rows(cells, right))
        text += line + "\n";
    for (std::size_t i = 0; i < comparison.checks.size(); ++i)
        text += wrapped(letter(i) + "  " + comparison.checks[i], style.columns, 3) + "\n";
    if (is_priced(comparison))
        text += wrapped("Costs in " + comparison.programme.currency + ", likely figures" +
                            (starred ? "; *: not all of it is known, see below" : ""),
                        style.columns) +
                "\n";
    return text;
}

std::vector<Labelled> cost_entries(const JudgedOption& option, const Comparison& comparison)
{
    const Programme& programme = comparison.programme;
    std::vector<Labelled> entries{
        {"cost a vehicle", cost_arithmetic(option.cost, CostBasis::a_vehicle, programme.currency)},
        {"cost once", cost_arithmetic(option.cost, CostBasis::once, programme.currency)},
        {"programme", programme_arithmetic(option.cost, programme)}};
    if (!option.cost.complete())
        entries.push_back({"left out", missing_words(option.cost)});
    return entries;
}

std::vector<Labelled> option_entries(const JudgedOption& option, const Comparison& comparison)
{
    std::vector<Labelled> entries{{"study", option.file}};
    for (const std::string& check : comparison.checks)
        entries.push_back({"check", check + ": " + answer_in_short(option, check)});
    if (&option != &comparison.options.front()) {
        entries.push_back({"parts", parts_words(option)});
        bool first = true;
        for (const std::string& change : change_words(option)) {
            entries.push_back({first ? "surfaces moved" : "", change});
            first = false;
        }
    }
    if (is_priced(comparison)) {
        const std::vector<Labelled> costs = cost_entries(option, comparison);
        entries.insert(entries.end(), costs.begin(), costs.end());
    }
    return entries;
}

std::string break_evens(const Comparison& comparison, const TextStyle& style)
{
    std::string text;
    for (const BreakEvenBetween& between : comparison.break_evens)
        text += wrapped("- " + break_even_words(between, comparison), style.columns, 2) + "\n";
    return text;
}

} // namespace

std::string answer_in_short(const JudgedOption& option, std::string_view check)
{
    const CheckFindings* answer = answer_of(option, check);
    if (!answer)
        return "not asked";
    const std::string outcome = short_words(answer->outcome);
    if (!answer->deciding || !applies(answer->deciding_verdict()))
        return outcome;
    const std::string margin = margin_words(answer->deciding_verdict());
    return margin == "-" ? outcome : outcome + ", " + margin;
}

std::vector<std::string> change_words(const JudgedOption& option)
{
    std::vector<std::string> lines;
    for (const SurfaceChange& change : option.changes)
        lines.push_back(change.surface + ": up to " + rounded(in_mm(change.deepest), 2) +
                        " mm, at " + point_words(change.where) + "; " +
                        rounded(in_mm2(change.area) / mm2_in_cm2, 1) + " cm2, about " +
                        rounded(change.volume / mm3_in_cm3, 1) + " cm3");
    return lines.empty() ? std::vector<std::string>{"none"} : lines;
}

std::string parts_words(const JudgedOption& option)
{
    std::vector<std::string> words;
    const auto add = [&](const std::vector<std::string>& names, const std::string& what) {
        std::vector<std::string> quoted;
        for (const std::string& name : names)
            quoted.push_back("\u201c" + name + "\u201d");
        if (!names.empty())
            words.push_back(what + " " + name_list(quoted));
    };
    add(option.lamps_added, "lamps added:");
    add(option.surfaces_added, "surfaces added:");
    add(option.lamps_gone, "lamps gone:");
    add(option.surfaces_gone, "surfaces gone:");
    std::string text;
    for (const std::string& word : words)
        text += (text.empty() ? "" : "; ") + word;
    return text.empty() ? "the same" : text;
}

std::string comparison_words(const Comparison& comparison, const TextStyle& style)
{
    std::string text = side_by_side(comparison, style);
    for (const JudgedOption& option : comparison.options)
        text += "\n" + harmless(option.name) + "\n" +
                labelled_block(option_entries(option, comparison), 2, style);
    if (is_priced(comparison) && !comparison.break_evens.empty())
        text += "\nWhere one option overtakes another\n" + break_evens(comparison, style);
    return text + "\n" + rule_sources_words(rows_in(comparison.options.front().findings), style) +
           "\n" + wrapped(caution, style.columns) + "\n";
}

} // namespace glim
