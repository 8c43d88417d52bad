#include "report/summary.h"

#include "model/rule.h"
#include "words/check_words.h"
#include "words/run_words.h"
#include "words/warning_words.h"

namespace glim {

namespace {

constexpr int indent = 2;

std::string heading(const Findings& findings, const RunFacts& facts, const TextStyle& style)
{
    const std::string title =
        findings.title.empty() ? facts.study : findings.title + " (" + facts.study + ")";
    return wrapped(title, style.columns) + "\n";
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
