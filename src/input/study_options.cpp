#include "input/study_options.h"

#include "input/name_book.h"
#include "input/study_section.h"
namespace glim {

namespace {

/// As it is written; nothing after a complaint.
std::optional<Range> figures(TableReader& table, const std::string& key, const std::string& unit)
{
    if (!table.holds_list(key)) {
        const std::optional<double> one = table.number(key, unit);
        return one ? std::optional(Range::of(*one)) : std::nullopt;
    }
    const auto three =
        table.numbers(key, 3, "write [low, likely, high] in " + unit + ", or one number");
    return three ? std::optional(Range{(*three)[0], (*three)[1], (*three)[2]}) : std::nullopt;
}

/// A cost is at least 0: what an option saves is what another one costs more. What divides is
/// `above` 0.
std::optional<Range> read_range(TableReader& table, const std::string& key, const std::string& unit,
                                bool above = false)
{
    const std::optional<Range> range = figures(table, key, unit);
    if (!range)
        return std::nullopt;
    const std::string what = "`" + key + "` of " + table.words();
    if (range->low > range->likely || range->likely > range->high)
        table.complain(key, what + " is no range", "write [low, likely, high] in rising order");
    else if (range->low < 0 || (above && range->low == 0))
        table.complain(key, what + (above ? " is not above 0" : " is below 0"),
                       (above ? "write it in " : "write 0 or more, in ") + unit);
    else
        return range;
    return std::nullopt;
}

std::string unit_of(const CostEntryWord& word, const std::string& money)
{
    if (word.entry == CostEntry::hours)
        return "hours";
    if (word.entry == CostEntry::changes)
        return "changes";
    return word.basis == CostBasis::a_vehicle ? money + " a vehicle" : money;
}

CostFigures read_entries(TableReader& option)
{
    CostFigures figures;
    std::optional<TableReader> table = option.table("costs", "`costs` of " + option.words());
    if (!table)
        return figures;
    for (std::size_t i = 0; i < cost_entry_words.size(); ++i)
        figures[i] = read_range(*table, std::string(cost_entry_words[i].key),
                                unit_of(cost_entry_words[i], "money"));
    finish_section(*table, "option.costs");
    return figures;
}

/// As the program can open it; whether it is there is asked when it is opened, since a remedy may
/// have to write it first, from this very study.
std::filesystem::path read_study_path(TableReader& table)
{
    table.demand("study", "name a study, or a folder of results with a study.toml in it");
    const std::optional<std::string> name = table.text("study");
    return name ? (table.folder_of("study") / *name).lexically_normal() : "";
}

} // namespace

std::vector<Option> read_options(TableReader& top)
{
    std::vector<Option> options;
    NameBook names("option");
    for (TableReader& table : top.tables("option", "[[option]]")) {
        Option option;
        option.name = names.read_name(table);
        option.study_place = table.place_of("study");
        option.study = read_study_path(table);
        option.costs = read_entries(table);
        option.others_cost_nothing = table.truth("others_cost_nothing").value_or(false);
        finish_section(table, "option");
        options.push_back(std::move(option));
    }
    return options;
}

std::optional<Programme> read_costs(TableReader& top)
{
    std::optional<TableReader> table = top.table("costs", "[costs]");
    if (!table)
        return std::nullopt;
    Programme programme;
    table->demand("currency", "write how sums of money are labelled, such as \"EUR\"");
    programme.currency = table->text("currency").value_or("");
    programme.volume = read_range(*table, "volume", "vehicles a year", true);
    programme.years = read_range(*table, "years", "years", true);
    programme.hour = read_range(*table, "hour", "money an hour");
    programme.change = read_range(*table, "change", "money a change");
    finish_section(*table, "costs");
    return programme;
}

} // namespace glim
