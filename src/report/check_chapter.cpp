#include "report/check_chapter.h"

#include "report/answer_words.h"
#include "report/lamp_section.h"
#include "report/rows_table.h"
#include "report/views_section.h"
#include "words/check_words.h"

namespace glim {

namespace {

Terms rule_terms(const CheckFindings& check)
{
    Terms terms{{{"regulation", {check.regulation}}}};
    if (!check.edition.empty())
        terms.terms.push_back({"edition", {check.edition}});
    for (const Labelled& entry : answer_entries(check))
        terms.terms.push_back({entry.label, {entry.text}});
    return terms;
}

std::vector<Block> rows_section(const Findings& findings, const CheckFindings& check)
{
    std::vector<Block> blocks{Heading{2, "All rows of the rule"}};
    Table rows = rows_table(findings, check);
    if (!rows.rows.empty())
        blocks.push_back(std::move(rows));
    std::vector<std::string> not_asked = rows_not_asked(findings, check);
    if (!not_asked.empty())
        blocks.push_back(BulletList{std::move(not_asked)});
    return blocks;
}

} // namespace

std::vector<Block> check_chapter(const ReportContent& content, std::size_t check)
{
    const CheckFindings& asked = content.findings.checks[check];
    std::vector<Block> blocks{
        PageBreak{}, Heading{1, "Check: " + asked.name},
        Paragraph{answer_sentence(content.findings, asked), tone_of(asked.outcome), true},
        rule_terms(asked)};
    append(blocks, vehicle_section(content, check));
    append(blocks, rows_section(content.findings, asked));
    for (const ChartedLamp& place : charted_lamps(content.findings))
        if (place.check == check)
            append(blocks, lamp_section(content, place));
    append(blocks, views_section(content, check));
    return blocks;
}

} // namespace glim
