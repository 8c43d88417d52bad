#include "words/check_words.h"

#include "model/nearest_word.h"
#include "words/citation_words.h"
#include "words/look_words.h"
#include "words/row_words.h"
#include "words/verdict_entries.h"

#include <algorithm>

namespace glim {

namespace {

std::string rule_words(const CheckFindings& check)
{
    std::string words = check.table + ", " + check.rule;
    if (!check.rule_title.empty())
        words += ": " + check.rule_title;
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
                             figure_words(row, *verdict), place_words(*verdict, look)});
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

/// Figures from another table come with their own source.
std::string proof_source(const RowFindings& row)
{
    return row.proof_from.empty() ? "" : "; " + citation_words(row.row.citation);
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
                entries.push_back({"", row.row.id + ": " + needed_words(row) + proof_source(row)});
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

std::vector<Labelled> answer_entries(const CheckFindings& check)
{
    std::vector<Labelled> entries{{"rule", rule_words(check)}};
    if (!check.options.empty())
        entries.push_back({"chosen", listed(check.options)});
    if (check.because != Because::of_the_figures)
        entries.push_back({"because", std::string(words_of(check.because)) +
                                          (check.explanation.empty() ? "" : ": ") +
                                          check.explanation});
    return entries;
}

std::vector<Labelled> check_entries(const Findings& findings, const CheckFindings& check)
{
    std::vector<Labelled> entries = answer_entries(check);
    const auto append = [&](const std::vector<Labelled>& more) {
        entries.insert(entries.end(), more.begin(), more.end());
    };
    if (check.deciding && applies(check.deciding_verdict()))
        append(verdict_entries(check.deciding_row(), check.deciding_verdict(),
                               findings.looks[check.deciding_verdict().look]));
    std::vector<Labelled> rows = row_entries(findings, check);
    if (!rows.empty())
        rows.front().label = "all rows";
    append(rows);
    return entries;
}

} // namespace glim
