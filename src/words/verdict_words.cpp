#include "words/verdict_words.h"

#include "words/criterion_words.h"
#include "words/look_words.h"
#include "words/numbers.h"
#include "words/row_words.h"

#include <algorithm>

namespace glim {

namespace {

/// More than these nobody reads on a terminal; result.json has them all.
constexpr std::size_t most_ranges = 5;

std::string precision_words(const LampLook& look, std::size_t at)
{
    if (is_exact(look, at))
        return "exact";
    return "estimated: likely within " + area_words(uncertainty(look, at)) + ", surely from " +
           area_words(look.low(at)) + " to " + area_words(look.high(at));
}

} // namespace

std::string spare_words(Area margin)
{
    return margin < Area() ? area_words(-margin) + " too little"
                           : area_words(margin) + " more than needed";
}

std::string demand_words(const RuleRow& row, const LampVerdict& verdict, const LampLook& look)
{
    if (!has_areas(verdict) || std::holds_alternative<LightTable>(row.criterion))
        return criterion_words(row.criterion);
    if (const auto* least = std::get_if<LeastArea>(&row.criterion))
        return "at least " + area_words(least->area) + " in view, " +
               field_words(verdict.field, speech_of(look));
    if (std::holds_alternative<NoObstacle>(row.criterion))
        return "some surface shown and no part of it hidden, " +
               field_words(verdict.field, speech_of(look));
    return criterion_words(row.criterion) + ", " + field_words(verdict.field, speech_of(look));
}

std::string least_words(const LampVerdict& verdict, const LampLook& look)
{
    const std::size_t at = worst_at(verdict);
    return area_words(verdict.least_visible) + " (" + precision_words(look, at) + "), " +
           spare_words(verdict.margin) + "; with nothing in the way " +
           area_words(look.seen[at].lens);
}

std::string hidden_words(const LampVerdict& verdict, const LampLook& look)
{
    const std::size_t at = worst_at(verdict);
    const bool exact = look.exact_hidden[at].has_value();
    const std::string precision = exact ? "exact"
                                        : "surely from " + area_words(look.hidden_low(at)) +
                                              " to " + area_words(look.hidden_high(at));
    return area_words(verdict.hidden) + " of " + area_words(look.approved(at)) + " (" + precision +
           "); up to " + area_words(verdict.tolerated) + " counts as touching";
}

std::string mesh_error_words(const LampVerdict& verdict)
{
    return "areas there may be off by " + area_words(verdict.mesh_error) +
           ", because meshes are not the surfaces they stand for: an estimate";
}

std::string between_words(const LampVerdict& verdict)
{
    if (verdict.between == Between::subdivided)
        return "met on the grid and, wherever the area could fall to the threshold in between, "
               "down to " +
               angle_words(verdict.finest_step);
    return "met on the grid, step " + angle_words(verdict.finest_step) +
           "; nothing is said of what lies between";
}

std::vector<std::string> crossing_words(const LampVerdict& verdict, const LampLook& look)
{
    // The row of the worst direction says most: where along it does the outcome change?
    const Angle v = look.toward[worst_at(verdict)].v;
    std::vector<std::string> lines;
    for (const Crossing& c : verdict.crossings) {
        if (c.met.v != v || c.unmet.v != v)
            continue;
        const Bearing middle{(c.met.h + c.unmet.h) / 2, v};
        lines.push_back(bearing_words(middle, speech_of(look)) + ", within " +
                        with_decimals(in_degrees(c.uncertainty), 2) + " deg");
    }
    return lines;
}

std::string measure_words(double figure, FigureUnit unit)
{
    switch (unit) {
    case FigureUnit::degrees:
        return rounded(figure, 2) + " deg";
    case FigureUnit::share:
        return rounded(figure * 100, 1) + " %";
    case FigureUnit::millimetres:
        break;
    }
    return rounded(figure, 1) + " mm";
}

const Measurement& tightest(const LampVerdict& verdict)
{
    return *std::min_element(verdict.measured.begin(), verdict.measured.end(),
                             [](const auto& a, const auto& b) { return a.margin() < b.margin(); });
}

std::string tightest_words(const LampVerdict& verdict)
{
    const Measurement& m = tightest(verdict);
    return measure_words(m.figure, m.unit);
}

std::vector<std::string> measured_words(const LampVerdict& verdict)
{
    std::vector<std::string> lines;
    for (const Measurement& m : verdict.measured) {
        std::string line = m.what + ": " + measure_words(m.figure, m.unit);
        if (m.at_least)
            line += ", at least " + measure_words(*m.at_least, m.unit);
        if (m.at_most)
            line += ", at most " + measure_words(*m.at_most, m.unit);
        lines.push_back(line + (m.note.empty() ? "" : " (" + m.note + ")"));
    }
    return lines;
}

std::string worst_words(const LampVerdict& verdict, const LampLook& look)
{
    const Bearing& b = look.toward[worst_at(verdict)];
    return bearing_words(b, speech_of(look)) + " (" + bearing_figures(b) + ")";
}

std::string coverage_words(const LampVerdict& verdict)
{
    const Coverage& c = verdict.coverage;
    std::string words =
        std::to_string(c.directions_met) + " of " + counted(c.directions, "direction");
    if (c.solid_angle > SolidAngle())
        words += ", " +
                 share_words(in_steradians(c.solid_angle_met), in_steradians(c.solid_angle)) +
                 " of the field's solid angle";
    std::string others;
    for (const OutcomeWord& word : outcome_words) {
        const auto count = std::count_if(
            verdict.directions.begin(), verdict.directions.end(), [&](const DirectionVerdict& d) {
                return !d.between && d.outcome == word.outcome && d.outcome != Outcome::met;
            });
        if (count > 0)
            others += (others.empty() ? "; " : ", ") + std::to_string(count) + " " +
                      short_words(word.outcome);
    }
    return words + others;
}

std::vector<std::string> uncovered_words(const LampVerdict& verdict, const LampLook& look)
{
    std::vector<std::string> lines;
    const std::size_t shown = std::min(verdict.uncovered.size(), most_ranges);
    for (std::size_t i = 0; i < shown; ++i) {
        const UncoveredRange& u = verdict.uncovered[i];
        lines.push_back(range_words({u.h_least, u.h_most, u.v_least, u.v_most}, speech_of(look)) +
                        ": " + counted(u.directions, "direction") + ", as little as " +
                        area_words(u.least_visible) + " in view");
    }
    if (const std::size_t more = verdict.uncovered.size() - shown; more > 0)
        lines.push_back("and " + counted(more, "smaller range"));
    return lines;
}

} // namespace glim
