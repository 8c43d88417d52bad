#include "report/answer_chapter.h"

#include "report/answer_words.h"
#include "report/caution_chapter.h"
#include "report/views_section.h"
#include "words/look_words.h"
#include "words/name_list.h"
#include "words/numbers.h"
#include "words/row_words.h"
#include "words/run_words.h"

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

std::string where(const Findings& findings, const LampVerdict& verdict)
{
    const LampLook& look = findings.looks[verdict.look];
    if (!has_areas(verdict))
        return place_words(verdict, look);
    return bearing_words(look.toward[worst_at(verdict)], speech_of(look));
}

TableCell outcome_cell(Outcome outcome)
{
    return {std::string(words_of(outcome)), tone_of(outcome)};
}

/// What a lamp shows under a row.
std::vector<TableCell> lamp_cells(const Findings& findings, const RowFindings& row,
                                  const LampVerdict& verdict)
{
    return {{label_of(findings.looks[verdict.look])},
            {figure_words(row, verdict)},
            {margin_words(verdict)},
            {where(findings, verdict)}};
}

/// The check with the lamp that decided, then the other lamps under the row that decided.
void add_answer(const Findings& findings, const CheckFindings& check, Table& table)
{
    const auto add = [&](std::vector<TableCell> of_check, const std::vector<TableCell>& of_lamp) {
        of_check.insert(of_check.end(), of_lamp.begin(), of_lamp.end());
        table.rows.push_back(std::move(of_check));
    };
    const std::vector<TableCell> answer{
        {check.name}, {check.regulation}, {check.rule}, outcome_cell(check.outcome)};
    if (!check.deciding || !applies(check.deciding_verdict()))
        return add(answer, {{"-"}, {"-"}, {"-"}, {"-"}});
    const RowFindings& row = check.deciding_row();
    add(answer, lamp_cells(findings, row, check.deciding_verdict()));
    for (const LampVerdict* verdict : verdicts_of(row))
        if (applies(*verdict) && verdict != &check.deciding_verdict())
            add({{check.name}, {"the same"}, {"the same"}, outcome_cell(verdict->outcome)},
                lamp_cells(findings, row, *verdict));
}

Table answers(const Findings& findings)
{
    Table table{"The answers: of each check, and below it of the other lamps under the row that "
                "decided. Seen from where it is worst; the margin is what was found less what is "
                "needed, and of rows of obstacles minus what is hidden.",
                {{"Check"},
                 {"Regulation"},
                 {"Rule"},
                 {"Answer"},
                 {"Lamp"},
                 {"Found", ColumnKind::figures},
                 {"Margin", ColumnKind::figures},
                 {"Seen from"}},
                {}};
    for (const CheckFindings& check : findings.checks)
        add_answer(findings, check, table);
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
    blocks.push_back(Paragraph{provenance_caution(findings)});
    blocks.push_back(Notice{std::string(caution)});
    if (const Figure* picture = first_picture(content))
        blocks.push_back(Figures{{*picture}});
    return blocks;
}

} // namespace glim
