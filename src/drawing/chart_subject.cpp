#include "drawing/chart_subject.h"

#include "words/light_words.h"
#include "words/look_words.h"
#include "words/numbers.h"
#include "words/verdict_words.h"

#include <algorithm>

namespace glim {

namespace {

/// So many times less than what is asked has the colour of nothing left.
constexpr double most_below_limit = 100;

std::string words_of_region(const RuleRow& row, Outcome outcome)
{
    std::string words(words_of(outcome));
    if (outcome != Outcome::not_met)
        return words;
    if (const auto* least = std::get_if<LeastArea>(&row.criterion))
        return words + ": less than " + area_words(least->area) + " in view";
    if (const auto* most = std::get_if<MostHidden>(&row.criterion))
        return words + ": more than " + share_words(most->share, 1) + " hidden";
    if (const auto* most = std::get_if<MostIntensity>(&row.criterion))
        return words + ": more than " + intensity_words(most->most);
    if (asks_light(row.criterion))
        return words + ": too little with nothing in the way, or nothing in view";
    return words + ": nothing of the lamp in view";
}

std::string words_of_threshold(const RuleRow& row)
{
    if (const auto* least = std::get_if<LeastArea>(&row.criterion))
        return area_words(least->area) + " in view, as asked";
    if (const auto* most = std::get_if<MostHidden>(&row.criterion))
        return share_words(most->share, 1) + " hidden, as allowed";
    if (const auto* least = std::get_if<LeastIntensity>(&row.criterion))
        return intensity_words(least->least) + " left, as asked";
    if (const auto* most = std::get_if<MostIntensity>(&row.criterion))
        return intensity_words(most->most) + ", as allowed";
    return "where hiding begins";
}

std::string words_of_worst(const ChartSubject& s, const LampLook& look)
{
    return std::string(s.words().worst) + ": " + charted_words(s.charted, s.worst_figure) + ", " +
           bearing_words(s.worst, speech_of(look));
}

std::optional<double> limit_of(const RuleRow& row)
{
    if (const auto* least = std::get_if<LeastArea>(&row.criterion))
        return in_mm2(least->area);
    if (const auto* least = std::get_if<LeastIntensity>(&row.criterion))
        return in_candelas(least->least);
    if (const auto* most = std::get_if<MostIntensity>(&row.criterion))
        return in_candelas(most->most);
    return std::nullopt;
}

/// The figure and the margin in the worst direction.
void add_worst(ChartSubject& s, const LampVerdict& verdict)
{
    const auto found = std::find(s.figures.at.begin(), s.figures.at.end(), worst_at(verdict));
    if (s.words().is_light && found != s.figures.at.end()) {
        const auto node = static_cast<std::size_t>(found - s.figures.at.begin());
        s.worst_figure = s.figures.values[node];
        s.worst_margin = s.figures.margins[node];
        return;
    }
    s.worst_figure = in_mm2(s.of_area() ? verdict.least_visible : verdict.hidden);
    s.worst_margin = in_mm2(verdict.margin);
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

double ChartSubject::most() const
{
    double most = 0;
    for (const double value : figures.values)
        most = std::max(most, value); // what is no number is never more
    return most;
}

double ChartSubject::least() const
{
    double least = most();
    for (const double value : figures.values)
        least = std::min(least, value);
    return least;
}

ChartScale ChartSubject::scale() const
{
    const double top = most();
    if (!words().is_light)
        return {.least = 0, .most = top > 0 ? top : 1};
    const double asked = limit.value_or(top > 0 ? top : 1);
    double least = asked;
    for (const double value : figures.values)
        if (value > 0)
            least = std::min(least, value);
    return whole_decades(std::max(least, asked / most_below_limit), std::max(top, asked));
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
        .charted = charted_by(row),
        .limit = limit_of(row),
        .outline = {},
        .threshold = {},
        .threshold_label = {},
        .threshold_words = words_of_threshold(row),
        .regions = {},
        .worst = look.toward[worst_at(verdict)],
        .worst_figure = 0,
        .worst_margin = 0,
        .worst_words = {},
        .coverage_words = coverage_words(verdict),
    });
    s->outline = outline_of(s->figures.grid);
    s->threshold =
        s->limit ? level_set(s->figures.grid, s->figures.margins, 0, s->figures.passages).border
                 : border_of_met(s->figures);
    if (s->limit)
        s->threshold_label = charted_words(s->charted, *s->limit);
    add_worst(*s, verdict);
    s->regions = regions_of(row, s->figures);
    s->worst_words = words_of_worst(*s, look);
    return s;
}

} // namespace glim
