#include "remedy/moved_lamp.h"

#include "machine/stop.h"
#include "model/asked_checks.h"
#include "remedy/move_trials.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace glim {

namespace {

/// The map has so many places on each axis, and the one as drawn.
constexpr int map_steps = 12;

/// The least move is checked, and goes on so many times by this share where that was not enough.
constexpr int most_nudges = 4;
constexpr double nudge = 0.01;

/// Pairs are made of so many ways that pass alone.
constexpr std::size_t paired_ways = 3;

/// For the slope of the margin: so much of a way's limit is tried.
constexpr double slope_share = 0.1;

double accuracy_of(MoveWay way) { return turns(way) ? turn_accuracy_deg : shift_accuracy_mm; }

bool all_met(const std::vector<Outcome>& outcomes)
{
    return std::all_of(outcomes.begin(), outcomes.end(),
                       [](Outcome o) { return o == Outcome::met; });
}

LampMove along(MoveWay way, double by)
{
    LampMove move;
    move[way] = by;
    return move;
}

/// The search for one answer.
class MoveSearch {
public:
    MoveSearch(const Study& study, const MoveLampTask& task, const Workers& workers)
        : task_(task), workers_(workers), mover_(study, task, workers)
    {
    }

    MovedLampAnswer answer()
    {
        answer_.lamp = mover_.lamp().lamp();
        answer_.checks = mover_.checks();
        answer_.surfaces = mover_.lamp().surfaces();
        answer_.step = mover_.step();
        answer_.met_as_drawn = mover_.passes({});
        if (answer_.met_as_drawn)
            return std::move(answer_);
        search_ways();
        search_slope();
        search_pairs();
        confirm();
        answer_.tried = mover_.tried();
        return std::move(answer_);
    }

private:
    const MoveLimits& limits(MoveWay way) const
    {
        return task_.limits[static_cast<std::size_t>(way)];
    }

    void tell_progress()
    {
        if (workers_.progress)
            workers_.progress(++told_, 2 * move_way_count + 3);
    }

    void search_ways()
    {
        for (const MoveWayWord& word : move_way_words)
            for (const bool positive : {true, false}) {
                throw_if_stopped(workers_.stop);
                const double limit = positive ? limits(word.way).most : limits(word.way).least;
                tell_progress();
                if (limit == 0)
                    continue;
                WayAnswer way{word.way, positive, {}, {}};
                const double accuracy = accuracy_of(word.way) / std::abs(limit);
                const LampMove whole = along(word.way, limit);
                auto share = mover_.quick_share(whole, 1, accuracy);
                if (share)
                    share = mover_.refined(whole, *share, 1, accuracy);
                if (share) {
                    way.least = *share * limit;
                    way.farthest = mover_.lamp().farthest(*share * whole);
                    keep(*share * whole);
                }
                answer_.ways.push_back(way);
            }
    }

    void keep(const LampMove& move)
    {
        const Length farthest = mover_.lamp().farthest(move);
        if (answer_.least && farthest >= answer_.farthest)
            return;
        answer_.least = move;
        answer_.farthest = farthest;
    }

    bool within_limits(const LampMove& move) const
    {
        return std::all_of(move_way_words.begin(), move_way_words.end(), [&](const auto& word) {
            return move[word.way] >= limits(word.way).least &&
                   move[word.way] <= limits(word.way).most;
        });
    }

    /// The largest share of `move` within the limits; 0 where there is no room at all.
    double share_within_limits(const LampMove& move) const
    {
        double share = std::numeric_limits<double>::infinity();
        for (const MoveWayWord& word : move_way_words)
            if (const double by = move[word.way]; by != 0)
                share =
                    std::min(share, (by > 0 ? limits(word.way).most : limits(word.way).least) / by);
        return std::isfinite(share) ? share : 0;
    }

    /// Looks along `move` as far as it could be better than the best known.
    void try_along(const LampMove& move)
    {
        throw_if_stopped(workers_.stop);
        double most = share_within_limits(move);
        const Length whole = mover_.lamp().farthest(move);
        if (most <= 0 || whole <= Length())
            return;
        if (answer_.least)
            most = std::min(most, answer_.farthest / whole);
        const double accuracy = shift_accuracy_mm / in_mm(whole);
        const auto share = mover_.quick_share(move, most, accuracy);
        if (!share)
            return;
        if (const auto least = mover_.refined(move, *share, most, accuracy))
            keep(*least * move);
    }

    /// Where the margin grows fastest for the way that the lit faces go, about `from`.
    std::optional<LampMove> steepest(const LampMove& from)
    {
        const double here = mover_.quick(from).margin;
        LampMove slope;
        bool any = false;
        for (const MoveWayWord& word : move_way_words)
            for (const bool positive : {true, false}) {
                const double limit = positive ? limits(word.way).most : limits(word.way).least;
                if (limit == 0)
                    continue;
                const LampMove part = along(word.way, slope_share * limit);
                const double gain = mover_.quick(from + part).margin - here;
                const double way = in_mm(mover_.lamp().farthest(part));
                if (gain <= 0 || way <= 0 || std::abs(slope[word.way]) > gain / way)
                    continue;
                // A step by one unit of each way goes so far; gains are weighed by it.
                const double unit = slope_share * limit / way;
                slope[word.way] = gain / way * unit;
                any = true;
            }
        return any ? std::optional(slope) : std::nullopt;
    }

    void search_slope()
    {
        tell_progress();
        if (const auto slope = steepest({}))
            try_along(*slope);
        tell_progress();
        if (answer_.least)
            if (const auto slope = steepest(*answer_.least))
                try_along(*slope);
    }

    /// Half of each of two ways that pass alone, of those that move the lit faces least.
    void search_pairs()
    {
        tell_progress();
        std::vector<WayAnswer> best;
        for (const WayAnswer& way : answer_.ways)
            if (way.least)
                best.push_back(way);
        std::stable_sort(best.begin(), best.end(), [](const WayAnswer& a, const WayAnswer& b) {
            return a.farthest < b.farthest;
        });
        best.resize(std::min(best.size(), paired_ways));
        for (std::size_t i = 0; i < best.size(); ++i)
            for (std::size_t j = i + 1; j < best.size(); ++j)
                if (best[i].way != best[j].way)
                    try_along(0.5 * along(best[i].way, *best[i].least) +
                              0.5 * along(best[j].way, *best[j].least));
    }

    /// The last word has a check at the study's own step, which may want a little more.
    void confirm()
    {
        for (int i = 0; answer_.least && i <= most_nudges; ++i) {
            const LampMove further = (1 + nudge) * *answer_.least;
            const bool last = i == most_nudges || !within_limits(further);
            answer_.confirmed = mover_.checked(*answer_.least, last ? OfFailures::every_outcome
                                                                    : OfFailures::that_they_fail);
            if (last || all_met(answer_.confirmed))
                return;
            answer_.least = further;
            answer_.farthest = mover_.lamp().farthest(further);
        }
    }

    const MoveLampTask& task_;
    const Workers& workers_;
    MoveTrials mover_;
    MovedLampAnswer answer_;
    std::size_t told_ = 0;
};

/// Evenly from end to end, and 0.
std::vector<double> map_places(const MoveLimits& limits)
{
    std::vector<double> places{0};
    for (int i = 0; i <= map_steps; ++i)
        places.push_back(limits.least + (limits.most - limits.least) * i / map_steps);
    std::sort(places.begin(), places.end());
    places.erase(std::unique(places.begin(), places.end()), places.end());
    return places;
}

} // namespace

LampId lamp_of(const Study& study, const MoveLampTask& task)
{
    return task.lamp.value_or(study.checks[asked_checks(study, task.checks).front()].lamps.front());
}

MovedLampAnswer find_moved_lamp(const Study& study, const MoveLampTask& task,
                                const Workers& workers)
{
    return MoveSearch(study, task, workers).answer();
}

MoveMap move_map(const Study& study, const MoveLampTask& task, const Workers& workers)
{
    MoveTrials mover(study, task, workers);
    MoveMap map{task.map,
                map_places(task.limits[static_cast<std::size_t>(task.map[0])]),
                map_places(task.limits[static_cast<std::size_t>(task.map[1])]),
                {}};
    for (const double up : map.up)
        for (const double across : map.across) {
            throw_if_stopped(workers.stop);
            LampMove move = along(map.ways[0], across);
            move[map.ways[1]] = up;
            map.answers.push_back(mover.quick(move));
            if (workers.progress)
                workers.progress(map.answers.size(), map.up.size() * map.across.size());
        }
    return map;
}

Study with_moved_lamp(const Study& study, const MovableLamp& lamp, const LampMove& move)
{
    Study moved = study;
    const Placement where = lamp.placement(move);
    for (const SurfaceId surface : lamp.surfaces())
        moved.surfaces[surface].mesh = placed(study.surfaces[surface].mesh, where);
    for (const LampId id : lamp.lamps()) {
        Lamp& other = moved.lamps[id];
        if (other.centre)
            other.centre = where(*other.centre);
        if (other.axis)
            other.axis = where(*other.axis);
    }
    return moved;
}

} // namespace glim
