#include "judgement/built_looks.h"

#include "judgement/judge_plan.h"
#include "judgement/verdict.h"

#include <algorithm>

namespace glim {

namespace {

/// Differences of two sums of the same cells.
constexpr Area summing_error = square_millimetres(1e-6);

/// More than what verdicts take as the same area, see verdict.cpp.
constexpr Area clearly_more = square_millimetres(1);

bool is_followed(const AskedRow& row, const Asked& asked)
{
    return !row.proof_from && looks_in_directions(*row.row, asked) &&
           !asks_light(row.row->criterion);
}

bool is_of_area(const RuleRow& row) { return std::holds_alternative<LeastArea>(row.criterion); }

} // namespace

BuiltLooks::BuiltLooks(const BuildGround& ground, Plan plan, const Workers& workers)
    : ground_(ground), plan_(std::move(plan))
{
    for (LampLook& look : plan_.looks) {
        take_as_sampled(look);
        std::fill(look.mesh_error.begin(), look.mesh_error.end(), Area());
    }
    follow();
    for (std::size_t l = 0; l < plan_.looks.size(); ++l) {
        const LampLook& look = plan_.looks[l];
        std::vector<Direction> toward;
        toward.reserve(look.toward.size());
        for (const Bearing& bearing : look.toward)
            toward.push_back(direction_of(bearing, look.frame));
        std::vector<NearEye> eyes;
        if (!at_[l].empty())
            for (const LampStanding& lamp : plan_.standings[l])
                eyes.emplace_back(ground_, lamp, toward, !plan_.visible_only[l], workers);
        eyes_.push_back(std::move(eyes));
    }
    correct();
}

const Asked& BuiltLooks::asked_of(const Followed& f) const
{
    const AskedRow& row = row_of(f);
    return f.together ? row.together[f.lamp] : row.lamps[f.lamp];
}

void BuiltLooks::follow()
{
    at_.resize(plan_.looks.size());
    verdicts_at_.resize(plan_.looks.size());
    for (std::size_t c = 0; c < plan_.checks.size(); ++c)
        for (std::size_t r = 0; r < plan_.checks[c].rows.size(); ++r) {
            const AskedRow& row = plan_.checks[c].rows[r];
            for (const bool together : {false, true}) {
                const std::vector<Asked>& asked = together ? row.together : row.lamps;
                for (std::size_t i = 0; i < asked.size(); ++i)
                    if (is_followed(row, asked[i]))
                        followed_.push_back({c, r, i, together});
            }
        }
    std::vector<std::vector<std::size_t>> at;
    at.reserve(followed_.size());
    for (const Followed& f : followed_)
        at.push_back(asked_of(f).at);
    keep_only(at);
}

void BuiltLooks::keep_only(const std::vector<std::vector<std::size_t>>& at)
{
    for (std::size_t l = 0; l < at_.size(); ++l) {
        at_[l].clear();
        verdicts_at_[l].assign(plan_.looks[l].toward.size(), {});
    }
    for (std::size_t i = 0; i < followed_.size(); ++i) {
        const Followed& f = followed_[i];
        AskedRow& row = plan_.checks[f.check].rows[f.row];
        Asked& asked = f.together ? row.together[f.lamp] : row.lamps[f.lamp];
        asked.at = at[i];
        asked.weights.assign(at[i].size(), SolidAngle());
        std::vector<std::size_t>& all = at_[asked.look];
        all.insert(all.end(), at[i].begin(), at[i].end());
        for (const std::size_t d : at[i])
            verdicts_at_[asked.look][d].push_back(i);
    }
    for (std::vector<std::size_t>& all : at_) {
        std::sort(all.begin(), all.end());
        all.erase(std::unique(all.begin(), all.end()), all.end());
    }
}

BuiltLooks::Bench BuiltLooks::bench(RimSearch search) const { return {plan_.looks, search}; }

std::vector<NearEye::Before> BuiltLooks::before_eyes(std::size_t look,
                                                     const BuildPlaces& places) const
{
    std::vector<NearEye::Before> before;
    before.reserve(eyes_[look].size());
    for (const NearEye& eye : eyes_[look])
        before.push_back(eye.before(places));
    return before;
}

/// What the fine lattice sees as drawn, and the coarse one does not.
void BuiltLooks::correct()
{
    const BuildPlaces places =
        ground_.moves.places(std::vector<double>(ground_.moves.factors().size()));
    for (std::size_t l = 0; l < plan_.looks.size(); ++l) {
        corrections_.emplace_back(plan_.looks[l].toward.size());
        if (!plan_.visible_only[l])
            continue;
        const std::vector<NearEye::Before> before = before_eyes(l, places);
        for (const std::size_t at : at_[l]) {
            Area coarse;
            for (std::size_t e = 0; e < eyes_[l].size(); ++e)
                coarse += eyes_[l][e].visible(before[e], at, RimSearch::close);
            corrections_[l][at] = plan_.looks[l].seen[at].visible - coarse;
        }
    }
}

void BuiltLooks::see(Bench& bench, std::size_t look, std::size_t at,
                     const std::vector<NearEye::Before>& before) const
{
    Area visible = corrections_[look][at], approved;
    for (std::size_t e = 0; e < eyes_[look].size(); ++e) {
        visible += eyes_[look][e].visible(before[e], at, bench.search);
        if (!plan_.visible_only[look])
            approved += eyes_[look][e].approved(before[e], at, bench.search);
    }
    SeenArea& seen = bench.looks[look].seen[at];
    seen.visible = seen.low = seen.high = std::max(Area(), visible);
    seen.approved = std::max(approved, seen.visible);
    const Area hidden = seen.approved - seen.visible;
    seen.hidden_low = seen.hidden_high = hidden > summing_error ? hidden : Area();
}

void BuiltLooks::see_all(Bench& bench, const BuildPlaces& places) const
{
    for (std::size_t l = 0; l < eyes_.size(); ++l) {
        const std::vector<NearEye::Before> before = before_eyes(l, places);
        for (const std::size_t at : at_[l])
            see(bench, l, at, before);
    }
}

std::vector<BuiltLooks::SurelySeen>
BuiltLooks::surely_seen(std::size_t look, const std::vector<NearEye::Before>& before) const
{
    std::vector<SurelySeen> all;
    all.reserve(at_[look].size());
    for (const std::size_t at : at_[look]) {
        Area area = corrections_[look][at];
        for (std::size_t e = 0; e < eyes_[look].size(); ++e)
            area += eyes_[look][e].surely_visible(before[e], at);
        all.push_back({at, std::max(Area(), area)});
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const SurelySeen& a, const SurelySeen& b) { return a.area < b.area; });
    return all;
}

// Verdicts of areas go by the least one: who surely sees more than the least that was found has no
// say. What is surely seen then stands for what is seen.
void BuiltLooks::see_what_decides(Bench& bench, const BuildPlaces& places) const
{
    std::vector<std::optional<Area>> least(followed_.size());
    for (std::size_t l = 0; l < eyes_.size(); ++l) {
        const std::vector<NearEye::Before> before = before_eyes(l, places);
        for (const SurelySeen& sure : surely_seen(l, before)) {
            const std::vector<std::size_t>& whose = verdicts_at_[l][sure.at];
            SeenArea& seen = bench.looks[l].seen[sure.at];
            const bool decides =
                !plan_.visible_only[l] || std::any_of(whose.begin(), whose.end(), [&](auto v) {
                    return !least[v] || sure.area <= *least[v] + clearly_more;
                });
            if (decides)
                see(bench, l, sure.at, before);
            else
                seen.visible = seen.low = seen.high = sure.area;
            for (const std::size_t v : whose)
                least[v] = std::min(least[v].value_or(seen.visible), seen.visible);
        }
    }
}

std::vector<BuildLook> BuiltLooks::look(Bench& bench, std::span<const double> deviations) const
{
    see_what_decides(bench, ground_.moves.places(deviations));
    std::vector<BuildLook> found;
    found.reserve(followed_.size());
    for (const Followed& f : followed_) {
        const RuleRow& row = *row_of(f).row;
        const Asked& asked = asked_of(f);
        const LampVerdict verdict =
            verdict_of(row, asked, bench.looks[asked.look], ground_.study.sampling);
        found.push_back({is_of_area(row) ? verdict.least_visible : verdict.hidden,
                         verdict.directions[verdict.worst].at, verdict.outcome});
    }
    return found;
}

std::vector<std::vector<Area>> BuiltLooks::standings(Bench& bench,
                                                     std::span<const double> deviations) const
{
    see_all(bench, ground_.moves.places(deviations));
    std::vector<std::vector<Area>> all;
    all.reserve(followed_.size());
    for (const Followed& f : followed_) {
        const Asked& asked = asked_of(f);
        std::vector<Area> standings;
        standings.reserve(asked.at.size());
        for (const std::size_t at : asked.at) {
            const SeenArea& seen = bench.looks[asked.look].seen[at];
            standings.push_back(is_of_area(*row_of(f).row) ? seen.visible
                                                           : Area() - seen.hidden_high);
        }
        all.push_back(std::move(standings));
    }
    return all;
}

} // namespace glim
