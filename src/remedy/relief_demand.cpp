#include "remedy/relief_demand.h"

#include "judgement/rank.h"

#include <algorithm>
#include <map>

namespace glim {

namespace {

/// What is added to a threshold, so that sums in another order still meet it; far less than any
/// threshold.
constexpr Area rounding_room = square_millimetres(1e-3);

bool counts(const RowFindings& row)
{
    return row.proof_from.empty() && !row.not_chosen && asks_directions(row.row.criterion) &&
           !asks_light(row.row.criterion);
}

class Collector {
public:
    Collector(const Findings& findings, const Study& study) : findings_(findings), study_(study) {}

    void add(const CheckFindings& check, std::size_t place);
    std::vector<ReliefDemand> take();

private:
    using Key = std::pair<std::size_t, Bearing>;

    std::vector<std::size_t> helped_lamps(const CheckFindings& check, const RowFindings& row) const;
    void add(const RowFindings& row, const LampVerdict& verdict, std::size_t check);
    void add(ReliefDemand demand);
    std::optional<Area> needed(const RowFindings& row, const LampVerdict& verdict,
                               const DirectionVerdict& direction) const;

    const Findings& findings_;
    const Study& study_;
    std::map<Key, ReliefDemand> demands_;
};

/// The lamps under a row that have to meet it: all, or the best of each side.
std::vector<std::size_t> Collector::helped_lamps(const CheckFindings& check,
                                                 const RowFindings& row) const
{
    const auto rank = [&](std::size_t lamp) {
        Rank worst{Outcome::not_applicable, 0};
        for (const RowFindings& other : check.rows)
            if (counts(other))
                worst = std::min(worst, rank_of(other.lamps[lamp]));
        return worst;
    };
    std::vector<std::size_t> helped;
    std::map<Side, std::size_t> best;
    for (std::size_t i = 0; i < row.lamps.size(); ++i) {
        if (row.lamps[i].outcome == Outcome::not_applicable)
            continue;
        if (row.row.answered_by == AnsweredBy::each) {
            helped.push_back(i);
            continue;
        }
        const auto [entry, first] = best.emplace(findings_.looks[row.lamps[i].look].side, i);
        if (!first && rank(i) > rank(entry->second))
            entry->second = i;
    }
    for (const auto& [side, lamp] : best)
        helped.push_back(lamp);
    return helped;
}

void Collector::add(const CheckFindings& check, std::size_t place)
{
    for (const RowFindings& row : check.rows) {
        if (!counts(row))
            continue;
        if (row.together)
            add(row, *row.together, place);
        else
            for (const std::size_t lamp : helped_lamps(check, row))
                add(row, row.lamps[lamp], place);
    }
}

/// What has to be seen there; nothing where enough is seen.
std::optional<Area> Collector::needed(const RowFindings& row, const LampVerdict& verdict,
                                      const DirectionVerdict& direction) const
{
    const LampLook& look = findings_.looks[verdict.look];
    const std::size_t at = direction.at;
    if (std::holds_alternative<NoObstacle>(row.row.criterion))
        return direction.outcome == Outcome::not_met ? std::optional(look.approved(at))
                                                     : std::nullopt;
    Area threshold = verdict.needed;
    if (const auto* most = std::get_if<MostHidden>(&row.row.criterion))
        threshold = (1 - most->share) * look.approved(at);
    const bool open =
        direction.outcome == Outcome::not_met || direction.outcome == Outcome::undecided;
    if (!open && look.visible(at) >= threshold + study_.relief.spare_area)
        return std::nullopt;
    return threshold + rounding_room + study_.relief.spare_area;
}

void Collector::add(const RowFindings& row, const LampVerdict& verdict, std::size_t check)
{
    const LampLook& look = findings_.looks[verdict.look];
    for (const DirectionVerdict& direction : verdict.directions) {
        const std::optional<Area> area = needed(row, verdict, direction);
        if (!area)
            continue;
        const std::size_t at = direction.at;
        const Area surely = look.low(at) - look.mesh_error[at];
        add({check, row.row.id, verdict.look, look.toward[at],
             direction_of(look.toward[at], look.frame), look.visible(at), *area,
             std::max(*area - look.visible(at), *area - study_.relief.spare_area - surely),
             std::holds_alternative<NoObstacle>(row.row.criterion)});
    }
}

void Collector::add(ReliefDemand demand)
{
    const auto [entry, is_new] = demands_.emplace(Key(demand.look, demand.bearing), demand);
    ReliefDemand& kept = entry->second;
    if (is_new)
        return;
    kept.needed = std::max(kept.needed, demand.needed);
    kept.everything = kept.everything || demand.everything;
}

std::vector<ReliefDemand> Collector::take()
{
    std::vector<ReliefDemand> all;
    all.reserve(demands_.size());
    for (auto& [key, demand] : demands_)
        all.push_back(std::move(demand));
    return all;
}

} // namespace

std::vector<ReliefDemand> relief_demands(const Findings& findings, const Study& study,
                                         std::span<const std::size_t> checks)
{
    Collector collector(findings, study);
    for (std::size_t i = 0; i < checks.size(); ++i)
        collector.add(findings.checks[i], checks[i]);
    return collector.take();
}

} // namespace glim
