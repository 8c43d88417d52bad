#include "drawing/chart_subject.h"

#include "words/look_words.h"
#include "words/numbers.h"
#include "words/verdict_words.h"

#include <algorithm>

namespace glim {

namespace {

std::string words_of_region(const RuleRow& row, Outcome outcome)
{
    std::string words(words_of(outcome));
    if (outcome != Outcome::not_met)
        return words;
    if (const auto* least = std::get_if<LeastArea>(&row.criterion))
        return words + ": less than " + area_words(least->area) + " in view";
    if (const auto* most = std::get_if<MostHidden>(&row.criterion))
        return words + ": more than " + share_words(most->share, 1) + " hidden";
    return words + ": nothing of the lamp in view";
}

std::string words_of_threshold(const RuleRow& row)
{
    if (const auto* least = std::get_if<LeastArea>(&row.criterion))
        return area_words(least->area) + " in view, as asked";
    if (const auto* most = std::get_if<MostHidden>(&row.criterion))
        return share_words(most->share, 1) + " hidden, as allowed";
    return "where hiding begins";
}

std::string words_of_worst(const ChartSubject& s, const LampLook& look)
{
    const std::string what = s.of_area ? "least in view: " : "most hidden: ";
    return what + area_words(square_millimetres(s.worst_mm2)) + ", " +
           bearing_words(s.worst, speech_of(look));
}

std::vector<ChartSubject::Region> regions_of(const RuleRow& row, const DirectionFigures& figures)
{
    std::vector<ChartSubject::Region> regions;
    for (const OutcomeWord& w : outcome_words) {
        if (w.outcome == Outcome::met || std::find(figures.outcomes.begin(), figures.outcomes.end(),
                                                   w.outcome) == figures.outcomes.end())
            continue;
        regions.push_back(
            {w.outcome, words_of_region(row, w.outcome), region_of(figures, w.outcome)});
    }
    return regions;
}

} // namespace

double ChartSubject::most_mm2() const
{
    return *std::max_element(figures.areas_mm2.begin(), figures.areas_mm2.end());
}

std::shared_ptr<const ChartSubject> chart_subject(const CheckFindings& check,
                                                  const RowFindings& findings,
                                                  const LampVerdict& verdict, const LampLook& look,
                                                  Length hairline)
{
    const RuleRow& row = findings.row;
    auto s = std::make_shared<ChartSubject>(ChartSubject{
        .lamp = label_of(look) + " (" + check.name + ", " + row.id + ")",
        .figures = figures_of(row, verdict, look, hairline),
        .field = verdict.field,
        .speech = speech_of(look),
        .of_area = asks_area(row),
        .asked_mm2 = in_mm2(verdict.needed),
        .outline = {},
        .threshold = {},
        .threshold_label = {},
        .threshold_words = words_of_threshold(row),
        .regions = {},
        .worst = look.toward[worst_at(verdict)],
        .worst_mm2 = in_mm2(asks_area(row) ? verdict.least_visible : verdict.hidden),
        .worst_margin_mm2 = in_mm2(verdict.margin),
        .worst_words = {},
        .coverage_words = coverage_words(verdict),
    });
    s->outline = outline_of(s->figures.grid);
    s->threshold =
        s->of_area
            ? level_set(s->figures.grid, s->figures.margins_mm2, 0, s->figures.passages).border
            : border_of_met(s->figures);
    if (s->of_area)
        s->threshold_label = area_words(verdict.needed);
    s->regions = regions_of(row, s->figures);
    s->worst_words = words_of_worst(*s, look);
    return s;
}

} // namespace glim
