#include "judgement/verdict.h"

#include "judgement/direction_outcome.h"
#include "judgement/light_figures.h"

#include <algorithm>

namespace glim {

namespace {

/// Areas closer than this are the same: which of two such directions is worse would be noise.
constexpr Area same_area = square_millimetres(0.01);

/// So many directions are asked exactly before looking whether one of them has settled it.
constexpr std::size_t asked_at_once = 16;

/// The smaller, the worse a direction is among those of one outcome: what is in view for rows of
/// area, minus what is hidden for rows of obstacles.
Area standing_of(const RuleRow& row, const LampLook& look, std::size_t at)
{
    if (std::holds_alternative<LeastArea>(row.criterion))
        return look.visible(at);
    return look.approved(at) > Area() ? -look.hidden(at) : -look.lit_face;
}

/// The worst that must be: only what could be worse still matters.
Outcome settled_so_far(const std::vector<DirectionVerdict>& directions)
{
    Outcome settled = Outcome::met; // the enum runs from worst to best
    for (const DirectionVerdict& d : directions)
        settled = std::min(settled, d.at_best);
    return settled;
}

/// Decided where the worst that may be is the worst that must be: what lies between met and proof
/// due leaves nothing open beside a direction whose proof is due.
Outcome outcome_of(const std::vector<DirectionVerdict>& directions)
{
    const Outcome settled = settled_so_far(directions);
    const bool open = std::any_of(directions.begin(), directions.end(),
                                  [&](const auto& d) { return d.at_worst < settled; });
    return open ? Outcome::undecided : settled;
}

/// Rows of area: the least area, whatever its outcome; rows of obstacles: the worst outcome first.
/// The first among equals.
std::size_t worst_by_area(const RuleRow& row, const LampVerdict& verdict, const LampLook& look)
{
    const bool of_area = std::holds_alternative<LeastArea>(row.criterion);
    const auto counts = [&](const DirectionVerdict& d) {
        return of_area || d.outcome == verdict.outcome;
    };
    std::optional<Area> least;
    for (const DirectionVerdict& d : verdict.directions)
        if (counts(d))
            least = std::min(least.value_or(look.lit_face), standing_of(row, look, d.at));
    const auto first =
        std::find_if(verdict.directions.begin(), verdict.directions.end(), [&](const auto& d) {
            return counts(d) && standing_of(row, look, d.at) <= *least + same_area;
        });
    return static_cast<std::size_t>(first - verdict.directions.begin());
}

/// Of the worst outcome the one whose light exceeds least what is needed; the first among equals.
std::size_t worst_by_light(const RuleRow& row, const LampVerdict& verdict, const LampLook& look,
                           const Multiplier& multiplier)
{
    std::size_t worst = 0;
    const auto rank = [&](const DirectionVerdict& d) {
        return std::pair(d.outcome != verdict.outcome, light_margin(row, look, d.at, multiplier));
    };
    for (std::size_t i = 1; i < verdict.directions.size(); ++i)
        if (rank(verdict.directions[i]) < rank(verdict.directions[worst]))
            worst = i;
    return worst;
}

Coverage coverage_of(const std::vector<DirectionVerdict>& directions)
{
    Coverage c;
    for (const DirectionVerdict& d : directions) {
        if (d.between)
            continue;
        ++c.directions;
        c.solid_angle += d.weight;
        if (d.outcome != Outcome::met)
            continue;
        ++c.directions_met;
        c.solid_angle_met += d.weight;
    }
    return c;
}

/// The reason of the worst direction; where that one is decided and others are not, theirs.
Because reason_of(const LampVerdict& verdict)
{
    const DirectionVerdict& worst = verdict.directions[verdict.worst];
    if (worst.outcome == verdict.outcome)
        return worst.because;
    const auto first = std::find_if(verdict.directions.begin(), verdict.directions.end(),
                                    [&](const auto& d) { return d.outcome == verdict.outcome; });
    return first->because;
}

void add_figures(LampVerdict& verdict, const RuleRow& row, const LampLook& look, Length hairline)
{
    const std::size_t at = verdict.directions[verdict.worst].at;
    verdict.least_visible = look.visible(at);
    verdict.hidden = look.hidden(at);
    verdict.mesh_error = look.mesh_error[at];
    if (const auto* least = std::get_if<LeastArea>(&row.criterion)) {
        verdict.margin = verdict.least_visible - least->area;
        verdict.relative_margin = verdict.margin / least->area;
        return;
    }
    verdict.tolerated = tolerated_at(look, at, hairline);
    verdict.margin = Area() - verdict.hidden;
    if (verdict.light)
        return;
    const Area approved = look.approved(at);
    const double hidden_share = approved > Area() ? verdict.hidden / approved : 1;
    const auto* most = std::get_if<MostHidden>(&row.criterion);
    verdict.relative_margin = (most ? most->share : 0) - hidden_share;
}

} // namespace

LampVerdict begun_verdict(const Asked& asked)
{
    LampVerdict verdict;
    verdict.look = asked.look;
    verdict.field = asked.field;
    verdict.relaxation = asked.relaxation;
    verdict.category = asked.category;
    if (asked.not_applicable) {
        verdict.outcome = Outcome::not_applicable;
        verdict.because = *asked.not_applicable;
    } else if (asked.category_open) {
        verdict.because = Because::category_not_known;
    }
    return verdict;
}

LampVerdict verdict_of(const RuleRow& row, const Asked& asked, const LampLook& look,
                       const Sampling& sampling)
{
    LampVerdict verdict = begun_verdict(asked);
    if (const auto* least = std::get_if<LeastArea>(&row.criterion))
        verdict.needed = least->area;
    if (asked.not_applicable)
        return verdict;
    for (std::size_t i = 0; i < asked.at.size(); ++i) {
        const DirectionOutcome found =
            outcome_at(row, look, asked.at[i], sampling.hairline, asked.multiplier);
        const bool between = i >= asked.weights.size();
        verdict.directions.push_back({asked.at[i], between ? SolidAngle() : asked.weights[i],
                                      found.outcome, found.because, found.at_worst, found.at_best,
                                      between, found.would_suffice});
    }
    const bool of_light = asks_light(row.criterion);
    verdict.outcome = outcome_of(verdict.directions);
    verdict.worst = of_light ? worst_by_light(row, verdict, look, asked.multiplier)
                             : worst_by_area(row, verdict, look);
    verdict.coverage = coverage_of(verdict.directions);
    verdict.because = reason_of(verdict);
    if (of_light)
        add_light_figures(verdict, row, look, asked.multiplier);
    if (verdict.outcome != Outcome::met)
        verdict.between = Between::not_met_anyway;
    else if (asked.subdivided_to)
        verdict.between = Between::subdivided;
    verdict.finest_step = asked.subdivided_to.value_or(sampling.step);
    add_figures(verdict, row, look, sampling.hairline);
    return verdict;
}

bool may_be_met(const LampVerdict& verdict)
{
    return settled_so_far(verdict.directions) == Outcome::met;
}

std::vector<std::size_t> still_hanging(const RuleRow& row, const LampVerdict& verdict,
                                       const LampLook& look)
{
    const auto asked = [&](std::size_t at) {
        return look.exact[at] && (look.exact_hidden[at] || !must_be_certified(row));
    };
    std::vector<std::size_t> hanging;
    if (verdict.directions.empty())
        return hanging;
    const Outcome settled = settled_so_far(verdict.directions);
    for (const DirectionVerdict& d : verdict.directions)
        if (d.at_worst < settled && !asked(d.at))
            hanging.push_back(d.at);
    std::stable_sort(hanging.begin(), hanging.end(), [&](std::size_t a, std::size_t b) {
        return look.low(a) - look.hidden_high(a) < look.low(b) - look.hidden_high(b);
    });
    hanging.resize(std::min(hanging.size(), asked_at_once));
    const std::size_t worst = verdict.directions[verdict.worst].at;
    if (!asked(worst))
        hanging.push_back(worst);
    std::sort(hanging.begin(), hanging.end());
    hanging.erase(std::unique(hanging.begin(), hanging.end()), hanging.end());
    return hanging;
}

} // namespace glim
