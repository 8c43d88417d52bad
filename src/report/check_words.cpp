#include "report/check_words.h"

#include "model/nearest_word.h"
#include "report/blocker_words.h"
#include "report/citation_words.h"
#include "report/criterion_words.h"
#include "report/keys.h"
#include "report/look_words.h"
#include "report/numbers.h"
#include "report/verdict_words.h"

#include <algorithm>
#include <utility>

namespace glim {

namespace {

/// Less than this is smaller than what the figures are rounded to.
constexpr Area least_mesh_error_told = square_millimetres(0.05);

/// Labels only the first line of what belongs together.
void add_lines(std::vector<Labelled>& entries, const std::string& label,
               const std::vector<std::string>& lines, bool laid_out)
{
    for (const std::string& line : lines)
        entries.push_back({&line == lines.data() ? label : "", line, laid_out});
}

std::string_view answered_words(AnsweredBy answered_by)
{
    switch (answered_by) {
    case AnsweredBy::each:
        return "by each lamp";
    case AnsweredBy::together:
        return "by the lamps together";
    case AnsweredBy::one_alone:
        break;
    }
    return "by one lamp alone";
}

std::string asks_words(const RowFindings& row, const LampVerdict& verdict, const LampLook& look)
{
    std::string words = demand_words(row.row, verdict, look);
    if (row.lamps.size() > 1)
        words += ", " + std::string(answered_words(row.row.answered_by));
    return words;
}

std::string rule_words(const CheckFindings& check)
{
    std::string words = check.table + ", " + check.rule;
    if (!check.rule_title.empty())
        words += ": " + check.rule_title;
    return words;
}

std::string lamp_words(const LampLook& look)
{
    std::string words = label_of(look) + ": " + std::string(words_of(look.function)) + ", " +
                        std::string(key_of(look.side)) + "; centre " +
                        rounded(in_mm(look.axis_height), 0) + " mm above the ground (" + look.state;
    words += look.state_stands_in ? ", for want of the rule's own state of load)" : ")";
    if (look.centre_assumed)
        words += ", assumed: the centroid of the lit face";
    if (look.surface_basis != SurfaceBasis::declared)
        words += "; its lit face is the " + std::string(words_of(look.surface_basis));
    if (look.twin_is_alike)
        words += "; the scene is symmetric, so the lamp on the other side sees the same";
    return words;
}

void add_areas(std::vector<Labelled>& entries, const RowFindings& row, const LampVerdict& verdict,
               const LampLook& look)
{
    const bool of_area = std::holds_alternative<LeastArea>(row.row.criterion);
    if (of_area)
        entries.push_back({"least in view", least_words(verdict, look)});
    if (!of_area || verdict.outcome == Outcome::proof_due)
        entries.push_back({"hidden", hidden_words(verdict, look)});
    if (verdict.mesh_error >= least_mesh_error_told)
        entries.push_back({"meshes", mesh_error_words(verdict)});
    entries.push_back({"seen from", worst_words(verdict, look)});
    if (verdict.because != Because::of_the_figures)
        entries.push_back({"because", std::string(words_of(verdict.because))});
    entries.push_back({"passes", coverage_words(verdict.coverage)});
    if (verdict.outcome == Outcome::met)
        entries.push_back({"between", between_words(verdict)});
    add_lines(entries, "changes at", crossing_words(verdict, look), false);
    add_lines(entries, "not covered", uncovered_words(verdict, look), false);
    add_lines(entries, "in the way", blocker_table(verdict, look), true);
    if (const std::string patch = patch_words(verdict, look); !patch.empty())
        entries.push_back({"", patch});
}

void add_place(std::vector<Labelled>& entries, const LampVerdict& verdict)
{
    add_lines(entries, "measured", measured_words(verdict), false);
    if (!verdict.follows.empty())
        entries.push_back({"gives", verdict.follows});
    if (verdict.because != Because::of_the_figures)
        entries.push_back({"because", std::string(words_of(verdict.because))});
}

void add_decided(std::vector<Labelled>& entries, const Findings& findings,
                 const CheckFindings& check)
{
    const RowFindings& row = check.deciding_row();
    const LampVerdict& verdict = check.deciding_verdict();
    const LampLook& look = findings.looks[verdict.look];
    entries.push_back({"asks", asks_words(row, verdict, look)});
    if (has_areas(verdict))
        add_areas(entries, row, verdict, look);
    else
        add_place(entries, verdict);
    entries.push_back({"lamp", lamp_words(look)});
    entries.push_back({"source", citation_words(row.row.citation)});
    if (verdict.relaxation)
        entries.push_back(
            {"relaxed by", citation_words(row.row.relaxations[*verdict.relaxation].citation)});
}

/// Single lamps before those that answer together.
std::vector<const LampVerdict*> verdicts_of(const RowFindings& row)
{
    std::vector<const LampVerdict*> all;
    for (const LampVerdict& verdict : row.lamps)
        all.push_back(&verdict);
    if (row.together)
        all.push_back(&*row.together);
    return all;
}

/// The figure that the row is about.
std::string figure_of(const RowFindings& row, const LampVerdict& verdict)
{
    if (!has_areas(verdict))
        return verdict.measured.empty() ? "-" : tightest_words(verdict);
    if (std::holds_alternative<LeastArea>(row.row.criterion))
        return area_words(verdict.least_visible);
    return area_words(verdict.hidden) + " hidden";
}

std::string place_of(const LampVerdict& verdict, const LampLook& look)
{
    if (has_areas(verdict))
        return bearing_figures(look.toward[worst_at(verdict)]);
    return verdict.follows.empty() ? "" : "gives " + verdict.follows;
}

/// For a column: "not met", "proof due".
std::string short_words(Outcome outcome)
{
    std::string words(key_of(outcome));
    std::replace(words.begin(), words.end(), '_', ' ');
    return words;
}

/// One line for every verdict with figures, all rows' lines aligned with each other.
std::vector<std::string> figure_lines(const Findings& findings, const CheckFindings& check)
{
    std::vector<std::vector<std::string>> cells;
    for (const RowFindings& row : check.rows)
        for (const LampVerdict* verdict : verdicts_of(row)) {
            if (!applies(*verdict))
                continue;
            const LampLook& look = findings.looks[verdict->look];
            cells.push_back({"  " + label_of(look), short_words(verdict->outcome),
                             figure_of(row, *verdict), place_of(*verdict, look)});
        }
    return aligned_rows(cells, {2});
}

/// "wide: not asked, a condition of the row does not hold here", of all lamps or of one by one.
std::vector<Labelled> not_asked(const Findings& findings, const RowFindings& row)
{
    const std::vector<const LampVerdict*> all = verdicts_of(row);
    const bool any_applies =
        std::any_of(all.begin(), all.end(), [](auto* v) { return applies(*v); });
    const bool one_reason = std::all_of(
        all.begin(), all.end(), [&](auto* v) { return v->because == all.front()->because; });
    std::vector<Labelled> entries;
    for (const LampVerdict* verdict : all) {
        if (applies(*verdict))
            continue;
        const bool of_all = !any_applies && one_reason;
        entries.push_back(
            {"", row.row.id + (of_all ? "" : " of " + label_of(findings.looks[verdict->look])) +
                     ": not asked, " + std::string(words_of(verdict->because))});
        if (of_all)
            break;
    }
    return entries;
}

std::string needed_words(const RowFindings& row)
{
    const bool together = row.row.answered_by == AnsweredBy::together;
    const auto* least = std::get_if<LeastArea>(&row.row.criterion);
    return row.row.id + ": " +
           (least ? area_words(least->area) + " needed" : criterion_words(row.row.criterion)) +
           (together ? " together" : "") + (row.not_chosen ? "; not chosen" : "");
}

/// Every row and lamp in a line each, where there is more than the one that decided.
std::vector<Labelled> row_entries(const Findings& findings, const CheckFindings& check)
{
    const std::vector<std::string> lines = figure_lines(findings, check);
    std::vector<Labelled> entries;
    std::size_t line = 0;
    for (const RowFindings& row : check.rows) {
        bool is_first = true;
        for (const LampVerdict* verdict : verdicts_of(row)) {
            if (!applies(*verdict))
                continue;
            if (is_first)
                entries.push_back({"", needed_words(row)});
            entries.push_back({"", lines[line++], true});
            is_first = false;
        }
        const std::vector<Labelled> idle = not_asked(findings, row);
        entries.insert(entries.end(), idle.begin(), idle.end());
    }
    const bool is_more = check.rows.size() > 1 || lines.size() != 1;
    return is_more ? entries : std::vector<Labelled>{};
}

std::string upper_case(std::string_view words)
{
    std::string upper(words);
    std::transform(upper.begin(), upper.end(), upper.begin(), [](char c) {
        return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    });
    return upper;
}

std::string coloured(const std::string& text, Outcome outcome)
{
    constexpr std::string_view bold_blue = "\x1b[1;34m", bold_yellow = "\x1b[1;33m";
    return std::string(outcome == Outcome::met ? bold_blue : bold_yellow) + text + "\x1b[0m";
}

} // namespace

std::string check_heading(const CheckFindings& check, const TextStyle& style)
{
    const std::string outcome = upper_case(words_of(check.outcome));
    return (style.colour ? coloured(outcome, check.outcome) : outcome) + "  " +
           harmless(check.name);
}

std::vector<Labelled> check_entries(const Findings& findings, const CheckFindings& check)
{
    std::vector<Labelled> entries{{"rule", rule_words(check)}};
    if (!check.options.empty())
        entries.push_back({"chosen", listed(check.options)});
    if (check.because != Because::of_the_figures)
        entries.push_back({"because", std::string(words_of(check.because)) +
                                          (check.explanation.empty() ? "" : ": ") +
                                          check.explanation});
    if (check.deciding && applies(check.deciding_verdict()))
        add_decided(entries, findings, check);
    std::vector<Labelled> rows = row_entries(findings, check);
    if (!rows.empty())
        rows.front().label = "all rows";
    entries.insert(entries.end(), rows.begin(), rows.end());
    return entries;
}

} // namespace glim
