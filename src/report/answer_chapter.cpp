#include "report/answer_chapter.h"

#include "report/answer_words.h"
#include "report/look_words.h"
#include "report/name_list.h"
#include "report/numbers.h"
#include "report/row_words.h"
#include "report/run_words.h"
#include "report/views_section.h"

#include <algorithm>

namespace glim {

namespace {

/// The lamps that were asked about, mirror images not named again.
std::vector<std::string> lamp_names(const Findings& findings)
{
    std::vector<std::string> names;
    for (const LampLook& look : findings.looks)
        if (std::find(names.begin(), names.end(), look.name) == names.end())
            names.push_back(look.name);
    return names;
}

Paragraph asked(const ReportContent& content)
{
    return {"Asked of " + content.facts.study + ": can " + name_list(lamp_names(content.findings)) +
            " be seen from where the rules below ask it?"};
}

std::string where(const Findings& findings, const CheckFindings& check)
{
    const LampVerdict& verdict = check.deciding_verdict();
    const LampLook& look = findings.looks[verdict.look];
    if (!has_areas(verdict))
        return place_words(verdict, look);
    return bearing_words(look.toward[worst_at(verdict)], speech_of(look));
}

std::vector<TableCell> answer_row(const Findings& findings, const CheckFindings& check)
{
    std::vector<TableCell> row{{check.name},
                               {check.regulation},
                               {check.rule},
                               {std::string(words_of(check.outcome)), tone_of(check.outcome)}};
    if (!check.deciding || !applies(check.deciding_verdict())) {
        row.insert(row.end(), {{"-"}, {"-"}, {"-"}, {"-"}});
        return row;
    }
    const LampVerdict& verdict = check.deciding_verdict();
    row.push_back({label_of(findings.looks[verdict.look])});
    row.push_back({figure_words(check.deciding_row(), verdict)});
    row.push_back({margin_words(verdict)});
    row.push_back({where(findings, check)});
    return row;
}

Table answers(const Findings& findings)
{
    Table table{"The answers. Worst is the lamp and direction that decided; the margin is what was "
                "found less what is needed, and of rows of obstacles minus what is hidden.",
                {{"Check"},
                 {"Regulation"},
                 {"Rule"},
                 {"Answer"},
                 {"Worst for"},
                 {"Found", ColumnKind::figures},
                 {"Margin", ColumnKind::figures},
                 {"Seen from"}},
                {}};
    for (const CheckFindings& check : findings.checks)
        table.rows.push_back(answer_row(findings, check));
    return table;
}

} // namespace

std::vector<Block> answer_chapter(const ReportContent& content)
{
    const Findings& findings = content.findings;
    std::vector<Block> blocks{Heading{1, "The answer"}};
    blocks.push_back(Paragraph{"Of " + counted(findings.checks.size(), "check") + ": " +
                                   counts_words(findings) + ".",
                               Tone::plain, true});
    const CheckFindings& worst = findings.checks[worst_check(findings)];
    blocks.push_back(
        Paragraph{std::string(worst.outcome == Outcome::met ? "Nearest to failing" : "Worst") +
                      " is \u201c" + worst.name + "\u201d. " + answer_sentence(findings, worst),
                  tone_of(worst.outcome)});
    blocks.push_back(asked(content));
    blocks.push_back(answers(findings));
    blocks.push_back(Notice{std::string(caution)});
    if (const Figure* picture = first_picture(content))
        blocks.push_back(Figures{{*picture}});
    return blocks;
}

} // namespace glim
