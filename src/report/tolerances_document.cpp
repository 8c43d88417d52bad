#include "report/tolerances_document.h"

#include "drawing/tolerance_charts.h"
#include "model/rule.h"
#include "report/answer_words.h"
#include "report/caution_chapter.h"
#include "report/typeset_document.h"
#include "words/numbers.h"
#include "words/tolerance_words.h"

namespace glim {

namespace {

Table shares(const ToleranceFindings& found)
{
    Table table{.caption = "How many builds meet each check; in brackets where the share lies with "
                           "95 % confidence.",
                .columns = {{"Check"},
                            {"As drawn"},
                            {"Builds that meet it", ColumnKind::figures},
                            {"Share"}},
                .rows = {}};
    for (const ToleratedCheck& check : found.checks)
        table.rows.push_back(
            {{check.name},
             {std::string(words_of(check.as_drawn)), tone_of(check.as_drawn)},
             {std::to_string(check.share.met) + " of " + std::to_string(check.share.builds)},
             {share_of_builds_words(check.share)}});
    return table;
}

Table stack_table(const StackUp& stack, const ToleranceFindings& found, const Study& study)
{
    Table table{.caption = stack.every_corner
                               ? "The worst stack-up: all " + std::to_string(stack.looked_at) +
                                     " combinations of limits were looked at."
                               : "The worst stack-up found, in " + std::to_string(stack.looked_at) +
                                     " combinations of limits.",
                .columns = {{"Tolerance"}, {"Off by"}},
                .rows = {}};
    for (const std::string& line : stack_up_words(stack, found, study)) {
        const std::size_t colon = line.rfind(": ");
        table.rows.push_back({{line.substr(0, colon)}, {line.substr(colon + 2)}});
    }
    return table;
}

Table contributions(const ToleratedVerdict& verdict, const ToleranceFindings& found,
                    const Study& study)
{
    Table table{.caption = "Shares of the variance, in brackets where they lie with 95 % "
                           "confidence: what would vanish if it alone were held, and what would "
                           "remain if all others were.",
                .columns = {{"Of"},
                            {"By itself", ColumnKind::figures},
                            {"With others", ColumnKind::figures}},
                .rows = {}};
    for (std::size_t c = 0; c < verdict.contributions.size(); ++c)
        table.rows.push_back({{contributor_words(found.contributors[c], study)},
                              {variance_words(verdict.contributions[c].first)},
                              {variance_words(verdict.contributions[c].total)}});
    return table;
}

void add_verdict(const ToleratedVerdict& verdict, const ToleranceFindings& found,
                 const Study& study, std::vector<Block>& blocks)
{
    blocks.push_back(Heading{2, tolerated_verdict_words(verdict, found)});
    blocks.push_back(Terms{{{"Share", {share_of_builds_words(verdict.share)}},
                            {"As built", {figure_spread_words(verdict)}},
                            {"Worst from", {deciding_words(verdict, found)}},
                            {"Figures of the rule", {rule_source_words(verdict, found)}}}});
    Figures figures{{build_histogram(verdict)}};
    if (!verdict.contributions.empty())
        figures.figures.push_back(contribution_chart(verdict, found, study));
    blocks.push_back(std::move(figures));
    if (verdict.worst)
        blocks.push_back(stack_table(*verdict.worst, found, study));
    if (!verdict.contributions.empty())
        blocks.push_back(contributions(verdict, found, study));
}

void add_check(std::size_t place, const ToleranceFindings& found, const Study& study,
               std::vector<Block>& blocks)
{
    const ToleratedCheck& check = found.checks[place];
    blocks.push_back(Heading{1, check.name});
    if (check.deciding)
        add_verdict(found.verdicts[*check.deciding], found, study, blocks);
    else
        blocks.push_back(Paragraph{"What decides this check is taken as drawn: tolerances do not "
                                   "reach it."});
    for (std::size_t v = 0; v < found.verdicts.size(); ++v)
        if (found.verdicts[v].check == place && check.deciding != v &&
            found.verdicts[v].share.met < found.verdicts[v].share.builds)
            add_verdict(found.verdicts[v], found, study, blocks);
}

std::string spread_note(const Tolerance& tolerance)
{
    switch (tolerance.spread) {
    case Spread::normal:
        return "normal, figures are standard deviations";
    case Spread::uniform:
        return "uniform";
    case Spread::triangular:
        return "triangular";
    case Spread::limits:
        return "limits at " + shortest(tolerance.sigmas) + " standard deviations";
    }
    return "";
}

Table tolerances(const Study& study)
{
    Table table{.caption = "The tolerances as the study states them, to either side.",
                .columns = {{"Tolerance"}, {"Origin"}, {"Distribution"}, {"Figures"}},
                .rows = {}};
    for (const Tolerance& tolerance : study.variation.tolerances) {
        std::string figures;
        for (const ToleranceWayWord& word : tolerance_way_words)
            if (tolerance[word.way] > 0)
                figures += (figures.empty() ? "" : ", ") + std::string(word.key) + " " +
                           shortest(tolerance[word.way]) + " " + std::string(word.unit);
        table.rows.push_back({{tolerance.name},
                              {tolerance.origin == ToleranceOrigin::part ? "part" : "installation"},
                              {spread_note(tolerance)},
                              {figures}});
    }
    return table;
}

} // namespace

Document tolerances_document(const ToleranceFindings& found, const Study& study,
                             const std::vector<std::string>& names, const std::string& command)
{
    std::vector<Block> blocks{Heading{1, "Builds within tolerances"}};
    blocks.push_back(
        Paragraph{.text = tolerances_sentence(found, study.variation.task.share), .is_lead = true});
    blocks.push_back(shares(found));
    if (found.needed)
        blocks.push_back(Paragraph{needed_tolerance_words(*found.needed, study)});
    blocks.push_back(Notice{std::string(caution)});
    blocks.push_back(Paragraph{provenance_caution(found.as_drawn)});
    for (std::size_t c = 0; c < found.checks.size(); ++c)
        add_check(c, found, study, blocks);
    blocks.push_back(Heading{1, "What this stands on"});
    blocks.push_back(tolerances(study));
    blocks.push_back(BulletList{tolerance_cautions(found)});
    blocks.push_back(Terms{{{"Command", {command}}}});
    const std::string of = study.title.empty() ? "" : ": " + study.title;
    return typeset_document({"Lamp visibility: tolerances" + of, "", std::move(blocks)}, names);
}

} // namespace glim
