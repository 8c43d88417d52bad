#include "report/check_words.h"

#include "report/citation_words.h"
#include "report/keys.h"
#include "report/look_words.h"
#include "report/numbers.h"
#include "report/verdict_words.h"

#include <algorithm>
#include <utility>

namespace glim {

namespace {

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
    std::string words = demand_words(verdict, look);
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

std::string lamp_words(const LampLook& look, const RunFacts& facts)
{
    std::string words = label_of(look) + ": " + std::string(words_of(look.function)) + ", " +
                        std::string(key_of(look.side)) + "; centre " +
                        rounded(in_mm(look.axis_height), 0) + " mm above the ground (" +
                        facts.ground_state + ")";
    if (look.centre_assumed)
        words += ", assumed: the centroid of the lit face";
    if (look.twin_is_alike)
        words += "; the scene is symmetric, so the lamp on the other side sees the same";
    return words;
}

void add_decided(std::vector<Labelled>& entries, const Findings& findings,
                 const CheckFindings& check, const RunFacts& facts)
{
    const RowFindings& row = check.deciding_row();
    const LampVerdict& verdict = check.deciding_verdict();
    const LampLook& look = findings.looks[verdict.look];
    entries.push_back({"asks", asks_words(row, verdict, look)});
    entries.push_back({"least in view", least_words(verdict, look)});
    entries.push_back({"seen from", worst_words(verdict, look)});
    if (verdict.because != Because::of_the_figures)
        entries.push_back({"because", std::string(words_of(verdict.because))});
    entries.push_back({"passes", coverage_words(verdict.coverage)});
    add_lines(entries, "not covered", uncovered_words(verdict, look), false);
    add_lines(entries, "in the way", blocker_table(verdict, look), true);
    entries.push_back({"lamp", lamp_words(look, facts)});
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

/// One line for every verdict with figures, all rows' lines aligned with each other.
std::vector<std::string> figure_lines(const Findings& findings, const CheckFindings& check)
{
    std::vector<std::vector<std::string>> cells;
    for (const RowFindings& row : check.rows)
        for (const LampVerdict* verdict : verdicts_of(row)) {
            if (!applies(*verdict))
                continue;
            const LampLook& look = findings.looks[verdict->look];
            cells.push_back({"  " + label_of(look), std::string(words_of(verdict->outcome)),
                             area_words(verdict->least_visible),
                             bearing_figures(look.toward[worst_at(*verdict)])});
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

std::string needed_words(const RowFindings& row, const LampVerdict& verdict)
{
    const bool together = row.row.answered_by == AnsweredBy::together;
    return row.row.id + ": " + area_words(verdict.needed) + " needed" +
           (together ? " together" : "");
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
                entries.push_back({"", needed_words(row, *verdict)});
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

std::vector<Labelled> check_entries(const Findings& findings, const CheckFindings& check,
                                    const RunFacts& facts)
{
    std::vector<Labelled> entries{{"rule", rule_words(check)}};
    if (check.deciding && applies(check.deciding_verdict()))
        add_decided(entries, findings, check, facts);
    std::vector<Labelled> rows = row_entries(findings, check);
    if (!rows.empty())
        rows.front().label = "all rows";
    entries.insert(entries.end(), rows.begin(), rows.end());
    return entries;
}

} // namespace glim
