#include "report/lamp_section.h"

#include "words/blocker_words.h"
#include "words/look_words.h"
#include "words/numbers.h"
#include "words/verdict_entries.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// Longer tables are read by programs, which have result.json.
constexpr std::size_t most_rows = 16;

/// Lines with labels; what is laid out for a terminal, and goes on below it, has a table of its own
/// in a document.
Terms terms_of(const std::vector<Labelled>& entries)
{
    Terms terms;
    bool has_table = false;
    for (const Labelled& entry : entries) {
        has_table = entry.laid_out || (has_table && entry.label.empty());
        if (has_table)
            continue;
        if (!entry.label.empty())
            terms.terms.push_back({entry.label, {}});
        terms.terms.back().lines.push_back(entry.text);
    }
    return terms;
}

std::string or_dash(const std::optional<Area>& area) { return area ? area_words(*area) : "-"; }

void add_blockers(std::vector<Block>& blocks, const LampVerdict& verdict, const LampLook& look)
{
    const std::vector<const Blocker*> blockers = told_blockers(verdict, look);
    if (blockers.empty())
        return;
    Table table{"Alone is what would come into view if only this surface were gone; jointly is "
                "what others hide as well. Sampled: the figures rank the surfaces.",
                {{"Surface"},
                 {"Alone, at worst", ColumnKind::figures},
                 {"Jointly, at worst", ColumnKind::figures},
                 {"Alone, mean where it fails", ColumnKind::figures},
                 {"Jointly, mean where it fails", ColumnKind::figures},
                 {"Patch that takes 99 %"}},
                {}};
    for (const Blocker* b : blockers)
        table.rows.push_back({{surface_label(b->surface, b->twin, look)},
                              {area_words(b->alone_at_worst)},
                              {area_words(b->jointly_at_worst)},
                              {or_dash(b->mean_alone)},
                              {or_dash(b->mean_jointly)},
                              {b->patch.empty() ? "-" : box_words(b->patch)}});
    blocks.push_back(Heading{3, "What hides it"});
    blocks.push_back(std::move(table));
}

std::string from_to(Angle least, Angle most)
{
    return least == most ? bare_angle(least) : bare_angle(least) + " to " + bare_angle(most);
}

/// A field that is a line or a point has none.
std::string solid_angle_words(SolidAngle solid_angle)
{
    return solid_angle > SolidAngle() ? rounded(in_steradians(solid_angle), 4) : "-";
}

/// "The 16 largest of 40 ranges."
std::string shown_of_all(const std::string& which, std::size_t all)
{
    return all > most_rows ? "The " + std::to_string(most_rows) + " " + which + " of " +
                                 std::to_string(all) + "; result.json has them all. "
                           : "";
}

void add_uncovered(std::vector<Block>& blocks, const LampVerdict& verdict, const LampLook& look)
{
    const std::vector<UncoveredRange>& all = verdict.uncovered;
    if (all.empty())
        return;
    Table table{shown_of_all("largest", all.size()) +
                    "Directions that fail or are undecided, put together to ranges; the least area "
                    "in view within each.",
                {{"Range"},
                 {"H in deg", ColumnKind::code},
                 {"V in deg", ColumnKind::code},
                 {"Directions", ColumnKind::figures},
                 {"Solid angle in sr", ColumnKind::figures},
                 {"Least in view", ColumnKind::figures}},
                {}};
    for (std::size_t i = 0; i < std::min(all.size(), most_rows); ++i) {
        const UncoveredRange& u = all[i];
        table.rows.push_back(
            {{range_words({u.h_least, u.h_most, u.v_least, u.v_most}, speech_of(look))},
             {from_to(u.h_least, u.h_most)},
             {from_to(u.v_least, u.v_most)},
             {std::to_string(u.directions)},
             {solid_angle_words(u.solid_angle)},
             {area_words(u.least_visible)}});
    }
    blocks.push_back(Heading{3, "Directions not covered"});
    blocks.push_back(std::move(table));
}

/// Those nearest to the worst direction's height, in their own order.
std::vector<const Crossing*> told_crossings(const LampVerdict& verdict, const LampLook& look)
{
    std::vector<const Crossing*> all;
    for (const Crossing& c : verdict.crossings)
        all.push_back(&c);
    const Angle v = look.toward[worst_at(verdict)].v;
    const auto away = [&](const Crossing* c) { return std::abs(in_degrees(c->unmet.v - v)); };
    std::stable_sort(all.begin(), all.end(), [&](auto* a, auto* b) { return away(a) < away(b); });
    all.resize(std::min(all.size(), most_rows));
    std::sort(all.begin(), all.end());
    return all;
}

void add_crossings(std::vector<Block>& blocks, const LampVerdict& verdict, const LampLook& look)
{
    if (verdict.crossings.empty())
        return;
    Table table{
        shown_of_all("nearest to the height of the worst direction", verdict.crossings.size()) +
            "The outcome changes between these two directions, which were brought together "
            "by sampled areas.",
        {{"Met at", ColumnKind::code},
         {"In view there", ColumnKind::figures},
         {"No longer met at", ColumnKind::code},
         {"In view there", ColumnKind::figures},
         {"Uncertain by", ColumnKind::figures}},
        {}};
    for (const Crossing* c : told_crossings(verdict, look))
        table.rows.push_back({{bearing_figures(c->met)},
                              {area_words(c->visible_met)},
                              {bearing_figures(c->unmet)},
                              {area_words(c->visible_unmet)},
                              {angle_words(c->uncertainty)}});
    blocks.push_back(Heading{3, "Where the outcome changes"});
    blocks.push_back(std::move(table));
}

const std::vector<Figure>* charts_at(const ReportContent& content, const ChartedLamp& place)
{
    for (const LampCharts& charts : content.figures.charts)
        if (charts.place == place)
            return &charts.figures;
    return nullptr;
}

} // namespace

std::vector<Block> lamp_section(const ReportContent& content, const ChartedLamp& place)
{
    const RowFindings& row = content.findings.checks[place.check].rows[place.row];
    const LampVerdict& verdict = verdict_at(content.findings, place);
    const LampLook& look = content.findings.looks[verdict.look];
    std::vector<Block> blocks{Heading{2, label_of(look) + ", row " + row.row.id},
                              terms_of(verdict_entries(row, verdict, look))};
    if (const std::vector<Figure>* charts = charts_at(content, place))
        blocks.push_back(Figures{*charts});
    if (std::holds_alternative<MostIntensity>(row.row.criterion)) // what is hidden does not count
        return blocks;
    add_blockers(blocks, verdict, look);
    add_uncovered(blocks, verdict, look);
    add_crossings(blocks, verdict, look);
    return blocks;
}

} // namespace glim
