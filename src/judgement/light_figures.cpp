#include "judgement/light_figures.h"

#include <algorithm>

namespace glim {

namespace {

/// As a share; see direction_outcome.cpp.
constexpr double rounding = 1e-9;

double share_above(std::optional<Intensity> light, Intensity needed)
{
    return light ? *light / needed - 1 : -1;
}

/// The verdict in a direction; nothing if it is not asked.
const DirectionVerdict* found_toward(const Bearing& toward, const LampVerdict& verdict,
                                     const LampLook& look)
{
    const auto found =
        std::find_if(verdict.directions.begin(), verdict.directions.end(),
                     [&](const DirectionVerdict& d) { return look.toward[d.at] == toward; });
    return found == verdict.directions.end() ? nullptr : &*found;
}

/// A group's points as they are found, one by one.
struct GroupSum {
    Intensity total; ///< of those that are asked
    std::optional<Intensity> whole = Intensity(), left = Intensity();
    bool all_in_view = true, surely_hidden = false;

    void add(const DirectionVerdict& point, const LampLook& look)
    {
        const std::optional<Intensity> more = look.light->toward[point.at].whole;
        whole = whole && more ? std::optional(*whole + *more) : std::nullopt;
        left = left && more ? std::optional(*left + *look.light_left(point.at)) : std::nullopt;
        all_in_view &= point.outcome == Outcome::met;
        surely_hidden |=
            point.outcome == Outcome::proof_due || point.because == Because::wholly_hidden;
    }

    Outcome outcome(const Multiplier& multiplier) const
    {
        if (!whole)
            return Outcome::undecided;
        if (*whole * (1 + rounding) < total * multiplier.least)
            return Outcome::not_met;
        if (*whole * (1 + rounding) < total * multiplier.most)
            return Outcome::undecided;
        if (all_in_view)
            return Outcome::met;
        return surely_hidden ? Outcome::proof_due : Outcome::undecided;
    }
};

GroupOfLight group_of(const LightGroup& group, const LampVerdict& verdict, const LampLook& look,
                      const Multiplier& multiplier)
{
    GroupSum sum{.total = group.total};
    for (const LightPoint& p : group.points)
        if (const DirectionVerdict* found = found_toward(p.toward, verdict, look))
            sum.add(*found, look);
        else
            sum.total -= p.least;
    GroupOfLight judged{group.name, sum.total * multiplier.least, sum.whole,
                        sum.left,   sum.outcome(multiplier),      {}};
    if (judged.outcome == Outcome::proof_due)
        judged.would_suffice = *sum.left * (1 + rounding) >= sum.total * multiplier.most;
    return judged;
}

/// Why a group has the outcome that it has.
Because reason_of(const GroupOfLight& group, const Multiplier& multiplier)
{
    if (group.outcome == Outcome::not_met)
        return Because::too_little_light;
    if (group.outcome != Outcome::undecided)
        return Because::of_the_figures;
    if (!group.whole)
        return Because::outside_measured_range;
    return *group.whole < group.needed * (multiplier.most / multiplier.least)
               ? Because::multiplier_not_known
               : Because::numerical_bounds;
}

/// A group that is worse than every direction decides; among groups the worst outcome, then the
/// least margin.
void let_groups_decide(LampVerdict& verdict, const Multiplier& multiplier)
{
    const std::vector<GroupOfLight>& groups = verdict.light->groups;
    const auto margin = [](const GroupOfLight& g) { return share_above(g.left, g.needed); };
    const auto worst =
        std::min_element(groups.begin(), groups.end(), [&](const auto& a, const auto& b) {
            return std::pair(a.outcome, margin(a)) < std::pair(b.outcome, margin(b));
        });
    if (worst == groups.end() || worst->outcome > verdict.outcome)
        return;
    if (worst->outcome == verdict.outcome && margin(*worst) >= verdict.relative_margin)
        return;
    if (worst->outcome < verdict.outcome)
        verdict.because = reason_of(*worst, multiplier);
    verdict.outcome = worst->outcome;
    verdict.relative_margin = margin(*worst);
    verdict.light->worst_group = static_cast<std::size_t>(worst - groups.begin());
}

/// Of the group or the direction that decides.
std::optional<Intensity> margin_of(const LightFigures& figures, const RuleRow& row)
{
    if (figures.worst_group) {
        const GroupOfLight& group = figures.groups[*figures.worst_group];
        return group.left ? std::optional(*group.left - group.needed) : std::nullopt;
    }
    if (!figures.whole || !figures.left)
        return std::nullopt;
    return std::holds_alternative<MostIntensity>(row.criterion) ? figures.needed - *figures.whole
                                                                : *figures.left - figures.needed;
}

/// Whether all that is due would do.
LightEstimate estimate_of(const LampVerdict& verdict)
{
    LightEstimate estimate{.suffices = true};
    for (const DirectionVerdict& d : verdict.directions)
        if (d.outcome == Outcome::proof_due)
            estimate.suffices = *estimate.suffices && d.would_suffice.value_or(false);
    for (const GroupOfLight& g : verdict.light->groups)
        if (g.outcome == Outcome::proof_due)
            estimate.suffices = *estimate.suffices && g.would_suffice.value_or(false);
    return estimate;
}

} // namespace

Intensity light_needed(const RuleRow& row, const Bearing& toward, const Multiplier& multiplier)
{
    if (const auto* most = std::get_if<MostIntensity>(&row.criterion))
        return most->most;
    if (const auto* least = std::get_if<LeastIntensity>(&row.criterion))
        return least->least;
    const auto& table = std::get<LightTable>(row.criterion);
    return least_toward(table, toward).value() * multiplier.least;
}

double light_margin(const RuleRow& row, const LampLook& look, std::size_t at,
                    const Multiplier& multiplier)
{
    const Intensity needed = light_needed(row, look.toward[at], multiplier);
    if (!std::holds_alternative<MostIntensity>(row.criterion))
        return share_above(look.light_left(at), needed);
    const std::optional<Intensity> whole = look.light->toward[at].whole;
    return whole ? 1 - *whole / needed : -1;
}

std::vector<GroupOfLight> groups_of(const LightTable& table, const LampVerdict& verdict,
                                    const LampLook& look, const Multiplier& multiplier)
{
    std::vector<GroupOfLight> groups;
    groups.reserve(table.groups.size());
    for (const LightGroup& group : table.groups)
        groups.push_back(group_of(group, verdict, look, multiplier));
    return groups;
}

void add_light_figures(LampVerdict& verdict, const RuleRow& row, const LampLook& look,
                       const Multiplier& multiplier)
{
    const std::size_t at = verdict.directions[verdict.worst].at;
    LightFigures figures;
    figures.multiplier = multiplier;
    figures.needed = light_needed(row, look.toward[at], multiplier);
    figures.whole = look.light->toward[at].whole;
    figures.left = look.light_left(at);
    if (const auto* table = std::get_if<LightTable>(&row.criterion))
        figures.groups = groups_of(*table, verdict, look, multiplier);
    verdict.light = std::move(figures);
    verdict.relative_margin = light_margin(row, look, at, multiplier);
    let_groups_decide(verdict, multiplier);
    verdict.light->margin = margin_of(*verdict.light, row);
    if (verdict.outcome == Outcome::proof_due)
        verdict.estimate = estimate_of(verdict);
}

} // namespace glim
