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
    case AnsweredBy::union_:
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

/// Every verdict of the check, single lamps before those that answer together.
std::vector<std::pair<const RowFindings*, const LampVerdict*>> verdicts(const CheckFindings& check)
{
    std::vector<std::pair<const RowFindings*, const LampVerdict*>> all;
    for (const RowFindings& row : check.rows) {
        for (const LampVerdict& verdict : row.lamps)
            all.emplace_back(&row, &verdict);
        if (row.together)
            all.emplace_back(&row, &*row.together);
    }
    return all;
}

/// Where there is more to see than the one verdict that decided.
std::vector<std::string> verdict_table(const Findings& findings, const CheckFindings& check)
{
    std::vector<std::vector<std::string>> rows;
    for (const auto& [row, verdict] : verdicts(check)) {
        if (!applies(*verdict))
            continue;
        const LampLook& look = findings.looks[verdict->look];
        rows.push_back({row->row.id, label_of(look), std::string(words_of(verdict->outcome)),
                        area_words(verdict->least_visible), "of " + area_words(verdict->needed),
                        bearing_words(look.toward[worst_at(*verdict)], speech_of(look))});
    }
    return rows.size() < 2 ? std::vector<std::string>{} : aligned_rows(rows, {3, 4});
}

/// Rows that ask nothing of a lamp, and why.
std::vector<std::string> not_asked(const Findings& findings, const CheckFindings& check)
{
    std::vector<std::string> lines;
    for (const auto& [row, verdict] : verdicts(check))
        if (!applies(*verdict))
            lines.push_back(row->row.id + " of " + label_of(findings.looks[verdict->look]) + ": " +
                            std::string(words_of(verdict->because)));
    return lines;
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
    add_lines(entries, "all rows", verdict_table(findings, check), true);
    add_lines(entries, "not asked", not_asked(findings, check), false);
    return entries;
}

} // namespace glim
