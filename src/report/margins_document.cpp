#include "report/margins_document.h"

#include "drawing/margin_chart.h"
#include "model/asked_checks.h"
#include "report/rule_sources.h"
#include "report/typeset_document.h"
#include "words/margin_words.h"

#include <algorithm>

namespace glim {

namespace {

Tone tone_of(const CheckMargins& check)
{
    if (!check.left_out.empty())
        return Tone::open;
    return check.met ? Tone::met : Tone::not_met;
}

Table margins_table(const CheckMargins& check, const MarginFindings& found, const Study& study)
{
    Table table{
        .caption = "Moved by itself, each surface changes the outcome at these moves; "
                   "what a mm costs is about where it is drawn.",
        .columns = {{"Surface"}, {"Moved"}, {check.met ? "Spoils it" : "Mends it"}, {"Loses"}},
        .rows = {}};
    for (const SurfaceMargin& margin : check.margins)
        table.rows.push_back({{study.surfaces[margin.surface].name},
                              {std::string(words_of(margin.way))},
                              {margin_moves_words(margin, found)},
                              {margin_gain_words(margin)}});
    return table;
}

void add_check(const CheckMargins& check, const MarginFindings& found, const Study& study,
               std::vector<Block>& blocks)
{
    blocks.push_back(Heading{1, study.checks[check.check].name});
    if (found.checks.size() > 1)
        blocks.push_back(Paragraph{margin_sentence(check, found, study), tone_of(check), false});
    if (!check.margins.empty()) {
        if (std::vector<Figure> charts = margin_charts(check, found, study); !charts.empty())
            blocks.push_back(Figures{std::move(charts)});
        blocks.push_back(margins_table(check, found, study));
    }
    blocks.push_back(Heading{2, "Figures of the rule"});
    blocks.push_back(rule_sources(asked_rows(study, {check.check})));
}

} // namespace

Document margins_document(const MarginFindings& found, const Study& study,
                          const std::vector<std::string>& names, const std::string& command)
{
    std::vector<Block> blocks{Heading{1, "How far each surface may move"}};
    for (const CheckMargins& check : found.checks)
        blocks.push_back(Paragraph{margin_sentence(check, found, study), tone_of(check), true});
    blocks.push_back(Notice{std::string(caution)});
    blocks.push_back(Paragraph{provenance_note(asked_rows(study, found.wanted.checks))});
    for (const CheckMargins& check : found.checks)
        add_check(check, found, study, blocks);
    blocks.push_back(Heading{1, "What this stands on"});
    BulletList notes{{margin_note(found)}};
    if (!found.idle.empty())
        notes.items.push_back(margin_idle_words(found, study));
    blocks.push_back(std::move(notes));
    blocks.push_back(Terms{{{"Command", {command}}}});
    const std::string of = study.title.empty() ? "" : ": " + study.title;
    return typeset_document({"Lamp visibility: margins" + of, "", std::move(blocks)}, names);
}

} // namespace glim
