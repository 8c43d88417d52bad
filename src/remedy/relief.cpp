#include "remedy/relief.h"

#include "judgement/session.h"
#include "model/asked_checks.h"
#include "remedy/deciding_place.h"
#include "remedy/relief_probe.h"
#include "remedy/relief_shape.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// How often a relief is made and looked at before a check of it, and how often it is checked.
constexpr int most_rounds = 6;
constexpr int most_checks = 3;
/// Neighbours of the grid, across its diagonals too.
constexpr double diagonal = 1.5;
/// How near to each other directions between them are asked for.
constexpr Angle between_step = degrees(2.5);
/// What figures may be off is asked for with so much on top.
constexpr double doubt_share = 1.1;
/// What a check finds wanting is asked for with so much on top, that the next round suffices.
constexpr double raise = 1.1;
/// And with no less than this; mm2.
constexpr double least_raise_mm2 = 0.02;
/// Twins that need the same but for rounding: the first, as drawn, is told of; mm.
constexpr double depth_grain_mm = 1e-3;

class ReliefFinder {
public:
    ReliefFinder(const Study& study, Angle step, const Workers& workers)
        : session_(study), step_(step), workers_(workers),
          checks_(asked_checks(study, study.relief.checks)),
          ground_(session_.study(), session_.scene())
    {
    }

    /// False where nothing has to be done.
    bool find_least();
    void find_shape();
    Relief take() { return std::move(relief_); }

private:
    using Key = std::pair<std::size_t, Bearing>;
    static Key key_of(const ReliefDemand& demand) { return {demand.look, demand.bearing}; }

    void add_between();
    void measure(std::size_t from);
    void add_sight(std::size_t demand);
    void set_limits();
    void limit(ReliefBarrier barrier, std::size_t demand, double reachable_mm2);
    void set_least();
    std::vector<FeasibleDemand> feasible() const;
    bool is_limited(const ReliefDemand& demand) const;
    bool make_once();
    void make(const ReliefPlan& plan);
    std::vector<ReliefDemand> left_in(const Findings& findings) const;
    bool ask_more_where_wanting();
    void ask_more(const std::vector<ReliefDemand>& left);
    void limit_room();
    void end(const std::vector<ReliefDemand>& left);

    Session session_;
    Angle step_;
    Workers workers_;
    std::vector<std::size_t> checks_;
    ReliefGround ground_;
    std::vector<ReliefDemand> demands_;
    std::size_t own_ = 0;    ///< so many of them are the findings' own
    std::vector<Area> base_; ///< what each asked for at first
    std::vector<DemandDepth> depths_;
    std::vector<Key> limited_; ///< demands that no relief within the limits meets
    std::vector<ReshapedPatch> reshaped_;
    Relief relief_;
};

bool ReliefFinder::find_least()
{
    relief_.before = session_.check(checks_, step_, workers_);
    demands_ = relief_demands(relief_.before, session_.study(), checks_);
    if (demands_.empty())
        return false;
    own_ = demands_.size();
    add_between();
    ground_.open_eyes(relief_.before, workers_);
    measure(0);
    set_limits();
    set_least();
    return true;
}

/// Between two neighbours of the grid that both fail, a relief made for them alone may leave too
/// little to be seen: directions between are asked for too, but are not told of.
void ReliefFinder::add_between()
{
    const double reach = diagonal * in_degrees(step_);
    const int parts = std::max(2, static_cast<int>(std::ceil(step_ / between_step)));
    for (std::size_t i = 0; i < own_; ++i)
        for (std::size_t j = i + 1; j < own_; ++j) {
            const ReliefDemand& a = demands_[i];
            const ReliefDemand& b = demands_[j];
            const double dh = in_degrees(b.bearing.h - a.bearing.h);
            const double dv = in_degrees(b.bearing.v - a.bearing.v);
            if (a.look != b.look || std::hypot(dh, dv) > reach || a.everything || b.everything)
                continue;
            for (int k = 1; k < parts; ++k) {
                ReliefDemand middle = a.needed > b.needed ? a : b;
                const double s = static_cast<double>(k) / parts;
                middle.bearing = {a.bearing.h + degrees(s * dh), a.bearing.v + degrees(s * dv)};
                middle.toward = direction_of(middle.bearing, relief_.before.looks[a.look].frame);
                demands_.push_back(middle);
            }
        }
    for (const ReliefDemand& demand : demands_)
        base_.push_back(demand.needed);
}

/// Depths of the demands from there on.
void ReliefFinder::measure(std::size_t from)
{
    const std::vector<ReliefDemand> asked(demands_.begin() + static_cast<std::ptrdiff_t>(from),
                                          demands_.end());
    const std::vector<DemandDepth> depths = demand_depths(ground_, asked, relief_.before, workers_);
    depths_.resize(from);
    depths_.insert(depths_.end(), depths.begin(), depths.end());
    for (std::size_t i = from; i < own_; ++i)
        add_sight(i);
}

void ReliefFinder::add_sight(std::size_t i)
{
    const ReliefDemand& demand = demands_[i];
    const DemandDepth& depth = depths_[i];
    ReliefSight sight{demand.check,
                      demand.row,
                      demand.look,
                      demand.bearing,
                      demand.seen,
                      square_millimetres(depth.needed_mm2),
                      square_millimetres(depth.most_mm2),
                      {}};
    if (depth.depth_mm)
        sight.depth = millimetres(*depth.depth_mm);
    if (i < relief_.sights.size())
        return;
    relief_.sights.push_back(std::move(sight));
}

bool ReliefFinder::is_limited(const ReliefDemand& demand) const
{
    return std::find(limited_.begin(), limited_.end(), key_of(demand)) != limited_.end();
}

/// Keeps, of each barrier, the direction that falls shortest.
void ReliefFinder::limit(ReliefBarrier barrier, std::size_t i, double reachable_mm2)
{
    limited_.push_back(key_of(demands_[i]));
    if (i >= own_) // not told of by itself
        i = relief_.least ? relief_.least->sight : 0;
    ReliefLimit limit{barrier, i, square_millimetres(reachable_mm2), {}, 1};
    auto found = std::find_if(relief_.limits.begin(), relief_.limits.end(),
                              [&](const ReliefLimit& l) { return l.barrier == barrier; });
    if (found == relief_.limits.end()) {
        relief_.limits.push_back(limit);
        return;
    }
    const auto shortfall = [&](const ReliefLimit& l) {
        return relief_.sights[l.sight].needed - l.reachable;
    };
    limit.directions = found->directions + 1;
    if (shortfall(limit) > shortfall(*found))
        *found = limit;
    else
        found->directions = limit.directions;
}

void ReliefFinder::set_limits()
{
    const std::optional<Length>& max_depth = session_.study().relief.max_depth;
    for (std::size_t i = 0; i < demands_.size(); ++i) {
        if (i >= own_ && !depths_[i].depth_mm)
            limited_.push_back(key_of(demands_[i]));
        else if (!depths_[i].depth_mm)
            limit(ReliefBarrier::fixed_part, i, depths_[i].most_mm2);
        else if (max_depth && *depths_[i].depth_mm > in_mm(*max_depth))
            limit(ReliefBarrier::max_depth, i, depths_[i].within_mm2);
    }
    for (ReliefLimit& each : relief_.limits)
        if (each.barrier == ReliefBarrier::fixed_part)
            each.part = fixed_part_in_the_way(ground_, demands_[each.sight],
                                              relief_.before.looks[demands_[each.sight].look]);
}

void ReliefFinder::set_least()
{
    std::optional<std::size_t> deepest;
    bool from_under = false;
    for (std::size_t i = 0; i < depths_.size(); ++i) {
        from_under = from_under || depths_[i].seen_from_under;
        if (i < own_ && depths_[i].depth_mm &&
            (!deepest || *depths_[i].depth_mm > *depths_[*deepest].depth_mm + depth_grain_mm))
            deepest = i;
    }
    if (!deepest)
        return;
    LeastDepth least;
    least.depth = millimetres(*depths_[*deepest].depth_mm);
    least.for_sure = least.depth;
    least.sight = *deepest;
    least.nothing_seen_from_under = !from_under;
    set_deciding_place(least, ground_, demands_[*deepest],
                       relief_.before.looks[demands_[*deepest].look]);
    relief_.least = least;
}

/// What fixed parts make impossible is left out; what the wish's depth does is done as far as it
/// goes.
std::vector<FeasibleDemand> ReliefFinder::feasible() const
{
    const std::optional<Length>& max_depth = session_.study().relief.max_depth;
    std::vector<FeasibleDemand> all;
    for (std::size_t i = 0; i < depths_.size(); ++i) {
        if (!depths_[i].depth_mm)
            continue;
        FeasibleDemand each{i, depths_[i].needed_mm2, *depths_[i].depth_mm};
        if (max_depth && each.depth_mm > in_mm(*max_depth)) {
            each.depth_mm = in_mm(*max_depth);
            each.needed_mm2 = depths_[i].within_mm2;
        }
        all.push_back(each);
    }
    return all;
}

void ReliefFinder::make(const ReliefPlan& plan)
{
    reshaped_ = reshaped_patches(ground_, plan, workers_);
    for (std::size_t p = 0; p < reshaped_.size(); ++p) {
        const PushedPatch& patch = ground_.patches()[p];
        const TriangleMesh pushed = pushed_mesh(reshaped_[p], patch.push);
        for (std::uint32_t s = 0; s < patch.surfaces.size(); ++s)
            session_.replace(patch.surfaces[s], mesh_of(pushed, reshaped_[p].mesh.of, s));
    }
}

/// What is still wanting, of what could be reached.
std::vector<ReliefDemand> ReliefFinder::left_in(const Findings& findings) const
{
    std::vector<ReliefDemand> left = relief_demands(findings, session_.study(), checks_);
    std::erase_if(left, [&](const ReliefDemand& demand) { return is_limited(demand); });
    return left;
}

/// Looks at the directions that were asked for. Where one shows too little, or not enough for a
/// sure verdict, it asks for what it lacks on top. False where none does.
bool ReliefFinder::ask_more_where_wanting()
{
    const std::vector<ProbedSight> sights =
        probed_sights(session_.study(), session_.scene(), demands_, relief_.before, workers_);
    bool wanting = false;
    for (std::size_t i = 0; i < demands_.size(); ++i) {
        if (demands_[i].everything || !depths_[i].depth_mm || is_limited(demands_[i]))
            continue;
        const Area sure = std::max(base_[i], base_[i] - session_.study().relief.spare_area +
                                                 doubt_share * sights[i].doubt);
        if (sights[i].visible >= sure)
            continue;
        demands_[i].needed += raise * (sure - sights[i].visible);
        wanting = true;
    }
    if (wanting)
        measure(0);
    return wanting;
}

/// What a check found besides: directions between those asked for, and doubts where none were seen.
void ReliefFinder::ask_more(const std::vector<ReliefDemand>& left)
{
    const std::size_t known = demands_.size();
    for (const ReliefDemand& wanting : left) {
        const auto end = demands_.begin() + static_cast<std::ptrdiff_t>(known);
        const auto found = std::find_if(demands_.begin(), end, [&](const ReliefDemand& d) {
            return key_of(d) == key_of(wanting);
        });
        if (found == end) {
            demands_.push_back(wanting);
            base_.push_back(wanting.needed);
        } else
            found->needed += raise * std::max(wanting.lacking, square_millimetres(least_raise_mm2));
    }
    measure(0);
}

/// A relief that runs into what lies behind is none.
void ReliefFinder::limit_room()
{
    const std::optional<RoomBehind>& room = relief_.shape.nearest_behind;
    if (!relief_.least || !room || room->distance > Length())
        return;
    const std::size_t sight = relief_.least->sight;
    relief_.limits.push_back({ReliefBarrier::room_behind, sight, relief_.sights[sight].seen,
                              room->part, relief_.sights.size()});
}

void ReliefFinder::end(const std::vector<ReliefDemand>& left)
{
    for (const ReliefDemand& wanting : left)
        for (std::size_t i = 0; i < demands_.size(); ++i)
            if (key_of(demands_[i]) == key_of(wanting))
                limit(ReliefBarrier::proof_only, i, in_mm2(wanting.seen));
    relief_.shape = shape_of(ground_, reshaped_);
    relief_.shape.nearest_behind = nearest_behind(ground_, session_.scene(), reshaped_);
    limit_room();
    if (relief_.least) {
        double deepest = 0;
        for (const FeasibleDemand& each : feasible())
            deepest = std::max(deepest, each.depth_mm);
        relief_.least->for_sure = std::max(relief_.least->depth, millimetres(deepest));
        relief_.slope_cost = slope_cost(ground_, reshaped_, deepest);
    }
    // A relief that was proved is a better bound than one that was reckoned.
    if (relief_.least && relief_.found() && relief_.shape.deepest < relief_.least->depth)
        relief_.least->depth = relief_.least->for_sure = relief_.shape.deepest;
    const std::vector<ReliefDemand> after =
        relief_demands(*relief_.after, session_.study(), checks_);
    for (const ReliefSight& sight : relief_.sights)
        if (std::none_of(after.begin(), after.end(), [&](const ReliefDemand& demand) {
                return key_of(demand) == Key(sight.look, sight.toward);
            }))
            ++relief_.directions_gained;
}

/// Makes the relief that the demands ask for now; false where none is possible.
bool ReliefFinder::make_once()
{
    const std::vector<FeasibleDemand> possible = feasible();
    if (possible.empty())
        return false;
    const ReliefPlan plan = relief_plan(ground_, demands_, relief_.before, possible, workers_);
    for (const auto& [place, seen] : plan.held_back)
        if (!is_limited(demands_[possible[place].demand]))
            limit(ReliefBarrier::edges, possible[place].demand, seen);
    make(plan);
    ++relief_.rounds;
    return true;
}

void ReliefFinder::find_shape()
{
    std::vector<ReliefDemand> left;
    for (int check = 0; check < most_checks; ++check) {
        bool wanting = true;
        for (int round = 0; wanting && round < most_rounds; ++round) {
            if (!make_once())
                return;
            wanting = ask_more_where_wanting();
        }
        relief_.after = session_.check(checks_, step_, workers_);
        left = left_in(*relief_.after);
        if (left.empty())
            break;
        if (check + 1 < most_checks)
            ask_more(left);
    }
    end(left);
}

} // namespace

Relief find_relief(const Study& study, Angle step, const Workers& workers)
{
    ReliefFinder finder(study, step, workers);
    if (finder.find_least())
        finder.find_shape();
    return finder.take();
}

Relief least_relief(const Study& study, Angle step, const Workers& workers)
{
    ReliefFinder finder(study, step, workers);
    finder.find_least();
    return finder.take();
}

} // namespace glim
