#include "judgement/verdict.h"

#include <algorithm>

namespace glim {

namespace {

/// The last bits of a sum of facets: an area that equals the threshold on paper meets it.
constexpr Area summing_error = square_millimetres(1e-6);

/// `low` and `high` are the bounds of the visible area there.
Outcome outcome_of(const LeastArea& criterion, Area low, Area high)
{
    const Area needed = criterion.area - summing_error;
    if (low >= needed)
        return Outcome::met;
    return high < needed ? Outcome::not_met : Outcome::undecided;
}

Outcome worst_outcome(const std::vector<DirectionVerdict>& directions)
{
    Outcome worst = Outcome::met;
    for (const DirectionVerdict& d : directions)
        worst = std::min(worst, d.outcome); // the enum runs from worst to best
    return worst;
}

/// Areas closer than this are the same: which of two such directions is worse would be noise.
constexpr Area same_area = square_millimetres(0.01);

/// The least visible area; the first among equals.
std::size_t worst_direction(const std::vector<DirectionVerdict>& directions, const LampLook& look)
{
    Area least = look.visible(directions.front().at);
    for (const DirectionVerdict& d : directions)
        least = std::min(least, look.visible(d.at));
    const auto first =
        std::find_if(directions.begin(), directions.end(), [&](const DirectionVerdict& d) {
            return look.visible(d.at) <= least + same_area;
        });
    return static_cast<std::size_t>(first - directions.begin());
}

Coverage coverage_of(const std::vector<DirectionVerdict>& directions)
{
    Coverage c;
    for (const DirectionVerdict& d : directions) {
        ++c.directions;
        c.solid_angle += d.weight;
        if (d.outcome != Outcome::met)
            continue;
        ++c.directions_met;
        c.solid_angle_met += d.weight;
    }
    return c;
}

Because reason_of(const LampVerdict& verdict, const LampLook& look)
{
    if (verdict.outcome == Outcome::undecided)
        return Because::numerical_bounds;
    const Area unobstructed = look.seen[verdict.directions[verdict.worst].at].lens;
    if (verdict.outcome == Outcome::not_met && unobstructed < verdict.needed)
        return Because::lens_too_small;
    return Because::of_the_figures;
}

} // namespace

LampVerdict verdict_of(const RuleRow& row, const Asked& asked, const LampLook& look)
{
    const auto& criterion = std::get<LeastArea>(row.criterion);
    LampVerdict verdict;
    verdict.look = asked.look;
    verdict.field = asked.field;
    verdict.relaxation = asked.relaxation;
    verdict.needed = criterion.area;
    if (asked.not_applicable) {
        verdict.outcome = Outcome::not_applicable;
        verdict.because = *asked.not_applicable;
        return verdict;
    }
    for (std::size_t i = 0; i < asked.at.size(); ++i) {
        const std::size_t at = asked.at[i];
        verdict.directions.push_back(
            {at, asked.weights[i], outcome_of(criterion, look.low(at), look.high(at))});
    }
    verdict.outcome = worst_outcome(verdict.directions);
    verdict.worst = worst_direction(verdict.directions, look);
    verdict.least_visible = look.visible(verdict.directions[verdict.worst].at);
    verdict.margin = verdict.least_visible - verdict.needed;
    verdict.coverage = coverage_of(verdict.directions);
    verdict.because = reason_of(verdict, look);
    return verdict;
}

std::vector<std::size_t> still_hanging(const LampVerdict& verdict, const LampLook& look)
{
    std::vector<std::size_t> hanging;
    if (verdict.directions.empty())
        return hanging;
    const std::size_t worst = verdict.directions[verdict.worst].at;
    if (!look.exact[worst])
        hanging.push_back(worst);
    if (verdict.outcome == Outcome::undecided)
        for (const DirectionVerdict& d : verdict.directions)
            if (d.outcome == Outcome::undecided && !look.exact[d.at])
                hanging.push_back(d.at);
    std::sort(hanging.begin(), hanging.end());
    hanging.erase(std::unique(hanging.begin(), hanging.end()), hanging.end());
    return hanging;
}

} // namespace glim
