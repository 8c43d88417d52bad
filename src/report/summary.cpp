#include "report/summary.h"

#include "model/rule.h"
#include "report/check_words.h"
#include "report/numbers.h"
#include "report/warning_words.h"

#include <algorithm>

namespace glim {

namespace {

constexpr int indent = 2;

std::string heading(const Findings& findings, const RunFacts& facts, const TextStyle& style)
{
    const std::string title =
        findings.title.empty() ? facts.study : findings.title + " (" + facts.study + ")";
    return wrapped(title, style.columns) + "\n";
}

std::string counts_words(const Findings& findings)
{
    std::string words;
    for (const OutcomeWord& word : outcome_words) {
        const auto count =
            std::count_if(findings.checks.begin(), findings.checks.end(),
                          [&](const CheckFindings& c) { return c.outcome == word.outcome; });
        if (count > 0)
            words +=
                (words.empty() ? "" : ", ") + std::to_string(count) + " " + std::string(word.words);
    }
    return words;
}

std::string looked_words(const Sampling& sampling)
{
    return "a direction every " + angle_words(sampling.step) +
           " and at every edge of a field; obstacles of " + rounded(in_mm(sampling.feature), 3) +
           " mm and more";
}

} // namespace

std::string summary(const Findings& findings, const RunFacts& facts, const TextStyle& style)
{
    std::string text = heading(findings, facts, style);
    for (const CheckFindings& check : findings.checks)
        text += "\n" + check_heading(check, style) + "\n" +
                labelled_block(check_entries(findings, check), indent, style);
    if (!facts.warnings.empty())
        text += "\n" + warnings_words(facts.warnings, style);
    text += "\n" + labelled_block({{"Checks", counts_words(findings)},
                                   {"Looked", looked_words(findings.sampling)}},
                                  0, style);
    return text + wrapped(caution, style.columns) + "\n";
}

std::string short_summary(const Findings& findings, const TextStyle& style)
{
    std::string text;
    for (const CheckFindings& check : findings.checks)
        text += check_heading(check, style) + "\n";
    return text + wrapped(caution, style.columns) + "\n";
}

} // namespace glim
