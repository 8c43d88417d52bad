#include "input/rule_criteria.h"

#include "input/number_word.h"
#include "input/rule_conditions.h"
#include "input/rule_points.h"
#include "model/rule_words.h"

#include <algorithm>
#include <functional>

namespace glim {

namespace {

/// A figure that must be there and above 0.
double positive(TableReader& table, std::string_view key, std::string_view unit,
                const std::string& what)
{
    const std::string remedy = "write " + std::string(key) + " = " + what;
    if (!table.demand(key, remedy))
        return 0;
    const std::optional<double> figure = table.number(key, unit);
    if (figure && *figure <= 0)
        table.complain(key, "`" + std::string(key) + "` of " + table.words() + " is not above 0",
                       remedy);
    return figure.value_or(0);
}

double share(TableReader& table, const std::string& what)
{
    const double share = positive(table, "share", "of 1", what + ", above 0 and up to 1");
    if (share > 1)
        table.complain("share", "`share` of " + table.words() + " is above 1",
                       "write a share of 1: 0.5 is half");
    return share;
}

Criterion read_least_area(TableReader& table)
{
    LeastArea least;
    least.area = square_millimetres(positive(table, "mm2", "mm2", "the least visible area in mm2"));
    const std::vector<std::string> known = {"met", "proof_due"};
    least.proof_if_hidden = table.choice("if_partly_hidden", known) == std::size_t{1};
    return least;
}

Criterion read_no_obstacle(TableReader&) { return NoObstacle{}; }

Criterion read_most_hidden(TableReader& table)
{
    return MostHidden{share(table, "the share that may be hidden")};
}

Criterion read_least_intensity(TableReader& table)
{
    return LeastIntensity{candelas(positive(table, "cd", "cd", "the least intensity in candela"))};
}

Criterion read_most_intensity(TableReader& table)
{
    return MostIntensity{candelas(positive(table, "cd", "cd", "the most intensity in candela"))};
}

Criterion read_height(TableReader& table)
{
    HeightLimits limits;
    std::vector<std::string> known;
    known.reserve(height_of_words.size());
    for (const HeightOfWord& word : height_of_words)
        known.emplace_back(word.key);
    table.demand("of", "regulations tell four heights apart; write of = " + quoted_choice(known));
    if (const auto* of = table.row_of("of", height_of_words, &HeightOfWord::key))
        limits.of = of->of;
    limits.at_least = table.length("at_least");
    limits.at_most = table.length("at_most");
    limits.unless_unavoidable = table.length("unless_unavoidable");
    if (!table.has("at_least") && !table.has("at_most"))
        table.complaints().add(table.place(), table.words() + " sets no limit",
                               "write at_least = or at_most =, in mm above the ground");
    if (limits.at_least && limits.at_most && *limits.at_least >= *limits.at_most)
        table.complain("at_most", table.words() + " can never be met",
                       "`at_most` must exceed `at_least`");
    if (limits.unless_unavoidable &&
        (!limits.at_most || *limits.unless_unavoidable <= *limits.at_most))
        table.complain("unless_unavoidable", table.words() + " widens no limit",
                       "`unless_unavoidable` must exceed `at_most`");
    return limits;
}

Criterion read_to_outer_edge(TableReader& table)
{
    return ToOuterEdge{
        millimetres(positive(table, "at_most", "mm", "the greatest distance in mm"))};
}

Criterion read_between_inner_edges(TableReader& table)
{
    return BetweenInnerEdges{
        millimetres(positive(table, "at_least", "mm", "the least distance in mm"))};
}

GapStep read_step(TableReader& table)
{
    GapStep step;
    table.demand("at_least", "write the gap in mm from which on this follows; 0 for any");
    step.at_least = table.length("at_least").value_or(Length());
    table.demand("follows", "write the category or the multiplier that follows, in quotes");
    step.follows = table.text("follows").value_or("");
    table.complain_of_unknown_keys();
    return step;
}

Criterion read_gap(TableReader& table)
{
    GapToLamp gap;
    table.demand("to", "write the functions of the lamps to measure to: to = [\"dipped_beam\"]");
    gap.to = read_functions(table, "to");
    table.demand("from", "write \"edge\" or \"centroid\"");
    if (const auto* from = table.row_of("from", gap_from_words, &GapFromWord::key))
        gap.from = from->from;
    const std::vector<std::string> known = {"category", "multiplier"};
    table.demand("gives", "write " + quoted_choice(known));
    gap.is_category = table.choice("gives", known).value_or(0) == 0;
    table.demand("steps", "write steps = [{ at_least = 40, follows = \"1\" }, ...], widest first");
    for (TableReader& one : table.tables("steps", "`steps` of " + table.words())) {
        gap.steps.push_back(read_step(one));
        const std::string& follows = gap.steps.back().follows;
        if (!gap.is_category && !follows.empty() && coordinate_in(follows).value_or(0) <= 0)
            one.complain("follows", "\"" + follows + "\" is no multiplier",
                         "write a number above 0 in quotes, such as \"1.5\"");
    }
    const bool falling =
        std::is_sorted(gap.steps.begin(), gap.steps.end(),
                       [](const GapStep& a, const GapStep& b) { return a.at_least > b.at_least; });
    if (!falling)
        table.complain("steps", "the steps of " + table.words() + " are out of order",
                       "write the widest gap first");
    return gap;
}

Criterion read_level_axis(TableReader& table)
{
    return LevelAxis{degrees(positive(table, "within", "deg", "the tolerance in degrees"))};
}

Criterion read_one_lamp(TableReader& table)
{
    const double filled = share(table, "the share of the smallest quadrilateral to be filled");
    return OneLamp{filled, millimetres(positive(table, "widest_gap", "mm",
                                                "the widest gap between facing edges in mm"))};
}

using Reader = Criterion (*)(TableReader&);
/// In the order of the alternatives of Criterion.
constexpr std::array<Reader, criterion_keys.size()> readers = {
    read_least_area, read_no_obstacle,   read_most_hidden,         read_least_intensity,
    read_height,     read_to_outer_edge, read_between_inner_edges, read_gap,
    read_level_axis, read_one_lamp,      read_most_intensity,      read_point_table,
};

} // namespace

Criterion read_criterion(TableReader& row)
{
    const std::vector<std::string> known(criterion_keys.begin(), criterion_keys.end());
    row.demand("criterion", "write criterion = { kind = \"least_area\", mm2 = ... }");
    std::optional<TableReader> table = row.table("criterion", "`criterion` of " + row.words());
    if (!table)
        return LeastArea{};
    table->demand("kind", "write kind = " + quoted_choice(known));
    const std::optional<std::size_t> kind = table->choice("kind", known);
    if (!kind) // its keys depend on the kind: no complaints about them
        return LeastArea{};
    Criterion criterion = readers[*kind](*table);
    table->complain_of_unknown_keys();
    return criterion;
}

} // namespace glim
