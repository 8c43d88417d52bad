#include "report/comparison_document.h"

#include "model/rule.h"
#include "report/answer_words.h"
#include "report/rule_sources.h"
#include "report/typeset_document.h"
#include "words/comparison_words.h"
#include "words/cost_words.h"
#include "words/money_words.h"
#include "words/name_list.h"
#include "words/numbers.h"
#include "words/rule_source_words.h"

#include <algorithm>
#include <utility>

namespace glim {

namespace {

bool is_priced(const Comparison& comparison) { return !comparison.programme.currency.empty(); }

Tone tone_of(const JudgedOption& option, const std::string& check)
{
    const CheckFindings* answer = answer_of(option, check);
    return answer ? tone_of(answer->outcome) : Tone::plain;
}

/// One row for each question, one column for each option: as people hold them side by side.
class SideBySide {
public:
    explicit SideBySide(const Comparison& comparison) : comparison_(comparison)
    {
        table_.columns.push_back({""});
        for (const JudgedOption& option : comparison.options)
            table_.columns.push_back({option.name});
    }

    template <class Cell>
    void add(const std::string& question, Cell cell)
    {
        std::vector<TableCell> row{{question}};
        for (const JudgedOption& option : comparison_.options)
            row.push_back(cell(option));
        table_.rows.push_back(std::move(row));
    }

    Table take(std::string caption)
    {
        table_.caption = std::move(caption);
        return std::move(table_);
    }

private:
    const Comparison& comparison_;
    Table table_;
};

TableCell changed_cell(const JudgedOption& option)
{
    std::string text;
    for (const std::string& line : change_words(option))
        text += (text.empty() ? "" : "; ") + line;
    return {text};
}

Table answers(const Comparison& comparison)
{
    SideBySide table(comparison);
    for (const std::string& check : comparison.checks)
        table.add(check, [&](const JudgedOption& option) {
            return TableCell{answer_in_short(option, check), tone_of(option, check)};
        });
    const JudgedOption* first = &comparison.options.front();
    table.add("Parts", [&](const JudgedOption& option) {
        return TableCell{&option == first ? "what the others are measured against"
                                          : parts_words(option)};
    });
    table.add("Surfaces moved", [&](const JudgedOption& option) {
        return &option == first ? TableCell{"-"} : changed_cell(option);
    });
    return table.take("The answers, with what was found less what is needed; and what each option "
                      "changes against the first.");
}

Table costs(const Comparison& comparison)
{
    const std::string& currency = comparison.programme.currency;
    SideBySide table(comparison);
    table.add("A vehicle", [&](const JudgedOption& option) {
        return TableCell{money_words(option.cost.a_vehicle, currency)};
    });
    table.add("Once", [&](const JudgedOption& option) {
        return TableCell{money_words(option.cost.once, currency)};
    });
    table.add("Over the programme", [&](const JudgedOption& option) {
        return TableCell{option.cost.programme ? money_words(*option.cost.programme, currency)
                                               : "not known"};
    });
    table.add("With its part of what counts once, a vehicle", [&](const JudgedOption& option) {
        return TableCell{option.cost.all_in ? money_words(*option.cost.all_in, currency)
                                            : "not known"};
    });
    table.add("Left out", [&](const JudgedOption& option) {
        return TableCell{option.cost.complete() ? "nothing" : missing_words(option.cost)};
    });
    return table.take("Costs as the study gives them. In brackets the lowest and the highest that "
                      "its ranges allow.");
}

void add_money(const Comparison& comparison, std::vector<Block>& blocks)
{
    if (!is_priced(comparison)) {
        blocks.push_back(Paragraph{"The study gives no [costs]: nothing is said of money."});
        return;
    }
    blocks.push_back(Heading{2, "Cost"});
    blocks.push_back(costs(comparison));
    BulletList list;
    for (const BreakEvenBetween& between : comparison.break_evens)
        list.items.push_back(break_even_words(between, comparison));
    if (!list.items.empty())
        blocks.push_back(std::move(list));
}

void add_figures(const ComparedPictures& pictures, std::size_t view,
                 std::optional<Figure> OptionView::*kind, std::vector<Block>& blocks)
{
    Figures figures;
    for (const std::vector<OptionView>& option : pictures.options)
        if (const std::optional<Figure>& figure = option[view].*kind)
            figures.figures.push_back(*figure);
    if (!figures.figures.empty())
        blocks.push_back(std::move(figures));
}

void add_pictures(const ComparedPictures& pictures, std::vector<Block>& blocks)
{
    if (pictures.views.empty())
        return;
    blocks.push_back(Heading{1, "Side by side in pictures"});
    blocks.push_back(Paragraph{"For each check, the lamp that each option's answer hangs on: as an "
                               "eye sees it from where the first option is worst, and the corner "
                               "around it."});
    for (std::size_t view = 0; view < pictures.views.size(); ++view) {
        blocks.push_back(Heading{2, name_list(pictures.views[view].checks)});
        add_figures(pictures, view, &OptionView::eye, blocks);
        add_figures(pictures, view, &OptionView::vehicle, blocks);
    }
}

Terms arithmetic(const JudgedOption& option, const Programme& programme)
{
    Terms terms{
        {{"A vehicle", {cost_arithmetic(option.cost, CostBasis::a_vehicle, programme.currency)}},
         {"Once", {cost_arithmetic(option.cost, CostBasis::once, programme.currency)}},
         {"Programme", {programme_arithmetic(option.cost, programme)}}}};
    if (!option.cost.complete())
        terms.terms.push_back({"Left out", {missing_words(option.cost)}});
    return terms;
}

void add_options(const Comparison& comparison, std::vector<Block>& blocks)
{
    blocks.push_back(Heading{1, "Option by option"});
    for (const JudgedOption& option : comparison.options) {
        blocks.push_back(Heading{2, option.name});
        Terms terms{{{"Study", {option.file}}}};
        for (const CheckFindings& check : option.findings.checks)
            terms.terms.push_back({check.name, {answer_sentence(option.findings, check)}});
        blocks.push_back(std::move(terms));
        if (is_priced(comparison))
            blocks.push_back(arithmetic(option, comparison.programme));
    }
}

} // namespace

Document comparison_document(const Comparison& comparison, const ComparedPictures& pictures,
                             const std::vector<std::string>& names)
{
    std::vector<Block> blocks{Heading{1, "Options side by side"}};
    blocks.push_back(answers(comparison));
    add_money(comparison, blocks);
    blocks.push_back(Notice{std::string(caution)});
    const std::vector<const RuleRow*> rows = rows_in(comparison.options.front().findings);
    blocks.push_back(Paragraph{provenance_note(rows)});
    add_pictures(pictures, blocks);
    add_options(comparison, blocks);
    blocks.push_back(Heading{1, "Figures of the rules"});
    blocks.push_back(rule_sources(rows));
    return typeset_document({"Lamp visibility: options compared", "", std::move(blocks)}, names);
}

} // namespace glim
