#include "remedy/moved_lamp.h"

#include "machine/stop.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace glim {

namespace {

/// Moves are looked at on this grid of directions, unless the study's own is coarser; corners of
/// fields are on every grid.
constexpr Angle scan_step = degrees(5);

/// While moves are scanned, so many rays across the lamp are enough.
constexpr double scan_rays_across = 32;

/// From the lamp to its limit a way is scanned in so many steps.
constexpr int scan_steps = 12;

/// The map has so many places on each axis, and the one as drawn.
constexpr int map_steps = 12;

/// The least move is checked, and goes on so many times by this share where that was not enough.
constexpr int most_nudges = 4;
constexpr double nudge = 0.01;

/// For the slope of the margin: so much of a way's limit is tried.
constexpr double slope_share = 0.1;

double accuracy_of(MoveWay way) { return turns(way) ? turn_accuracy_deg : shift_accuracy_mm; }

/// The same study with fewer rays, for scanning.
Study scanned(Study study, LampId lamp)
{
    Box box;
    for (const SurfaceId s : study.lamps[lamp].emits)
        for (const Point& p : study.surfaces[s].mesh.points)
            box.add(p);
    const Length coarse = millimetres(box.size().maxCoeff() / scan_rays_across);
    study.sampling.feature = std::max(study.sampling.feature, coarse);
    return study;
}

/// Tries moves: quickly while it scans, by a check where it refines.
class Mover {
public:
    Mover(const Study& study, const MoveLampTask& task, const Workers& workers)
        : workers_(workers), checks_(checks_of(study, task)), lamp_(study, lamp_of(study, task)),
          scan_(scanned(study, lamp_.lamp())), exact_(study),
          step_(std::max(study.sampling.step, scan_step))
    {
        workers_.progress = {};
    }

    QuickAnswer quick(const LampMove& move)
    {
        ++tried;
        lamp_.place(scan_, move);
        return quick_check(scan_, checks_, step_, workers_);
    }
    bool passes_quickly(const LampMove& move) { return quick(move).outcome == Outcome::met; }

    std::vector<Outcome> checked(const LampMove& move, Angle step)
    {
        ++tried;
        lamp_.place(exact_, move);
        std::vector<Outcome> outcomes;
        for (const CheckFindings& check : exact_.check(checks_, step, workers_).checks)
            outcomes.push_back(check.outcome);
        return outcomes;
    }
    bool passes(const LampMove& move) { return all_met(checked(move, step_)); }

    static bool all_met(const std::vector<Outcome>& outcomes)
    {
        return std::all_of(outcomes.begin(), outcomes.end(),
                           [](Outcome o) { return o == Outcome::met; });
    }

    /// The least share of `whole` that passes, to `accuracy` of a share; none up to `most`.
    std::optional<double> least_share(const LampMove& whole, double most, double accuracy)
    {
        double before = 0;
        for (int i = 1; i <= scan_steps; ++i) {
            const double share = most * i / scan_steps;
            if (passes_quickly(share * whole))
                return refined(whole, before, share, {most, accuracy});
            before = share;
        }
        return std::nullopt;
    }

    const MovableLamp& lamp() const { return lamp_; }
    const std::vector<std::size_t>& checks() const { return checks_; }
    Angle step() const { return step_; }
    std::size_t tried = 0;

private:
    struct Limits {
        double most, accuracy;
    };

    /// Between a share that fails and one that passes, as far as the quick look tells: halved, then
    /// brought to where a check changes its word.
    std::optional<double> refined(const LampMove& whole, double fails, double passes_at,
                                  const Limits& limits)
    {
        // Rays alone are good to some hundredths of a millimetre of a shadow's rim; a check moves
        // the place by little, so the last halvings are its own.
        const double coarse = 4 * limits.accuracy;
        while (passes_at - fails > coarse) {
            const double middle = (fails + passes_at) / 2;
            (passes_quickly(middle * whole) ? passes_at : fails) = middle;
        }
        for (double stride = coarse; !passes(passes_at * whole); stride *= 2) {
            fails = passes_at;
            passes_at += stride;
            if (passes_at > limits.most)
                return std::nullopt;
        }
        for (double stride = coarse; fails > 0 && passes(fails * whole); stride *= 2) {
            passes_at = fails;
            fails = std::max(0.0, fails - stride);
        }
        while (passes_at - fails > limits.accuracy) {
            const double middle = (fails + passes_at) / 2;
            (passes(middle * whole) ? passes_at : fails) = middle;
        }
        return passes_at;
    }

    Workers workers_;
    std::vector<std::size_t> checks_;
    MovableLamp lamp_;
    Session scan_, exact_;
    Angle step_;
};

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
        : study_(study), task_(task), workers_(workers), mover_(study, task, workers)
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
        answer_.tried = mover_.tried;
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
                if (const auto share = mover_.least_share(along(word.way, limit), 1, accuracy)) {
                    way.least = *share * limit;
                    way.farthest = mover_.lamp().farthest(along(word.way, *way.least));
                    keep(along(word.way, *way.least));
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
        if (const auto share = mover_.least_share(move, most, shift_accuracy_mm / in_mm(whole)))
            keep(*share * move);
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

    /// Half of each of two ways that pass alone.
    void search_pairs()
    {
        tell_progress();
        for (std::size_t i = 0; i < answer_.ways.size(); ++i)
            for (std::size_t j = i + 1; j < answer_.ways.size(); ++j) {
                const WayAnswer& a = answer_.ways[i];
                const WayAnswer& b = answer_.ways[j];
                if (a.least && b.least && a.way != b.way)
                    try_along(0.5 * along(a.way, *a.least) + 0.5 * along(b.way, *b.least));
            }
    }

    /// The last word has a check at the study's own step, which may want a little more.
    void confirm()
    {
        for (int i = 0; answer_.least && i <= most_nudges; ++i) {
            answer_.confirmed = mover_.checked(*answer_.least, study_.sampling.step);
            const LampMove further = (1 + nudge) * *answer_.least;
            if (Mover::all_met(answer_.confirmed) || !within_limits(further))
                return;
            if (i == most_nudges)
                return;
            answer_.least = further;
            answer_.farthest = mover_.lamp().farthest(further);
        }
    }

    const Study& study_;
    const MoveLampTask& task_;
    const Workers& workers_;
    Mover mover_;
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

std::vector<std::size_t> checks_of(const Study& study, const MoveLampTask& task)
{
    if (!task.checks.empty())
        return task.checks;
    std::vector<std::size_t> all(study.checks.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    return all;
}

LampId lamp_of(const Study& study, const MoveLampTask& task)
{
    return task.lamp.value_or(study.checks[checks_of(study, task).front()].lamps.front());
}

MovedLampAnswer find_moved_lamp(const Study& study, const MoveLampTask& task,
                                const Workers& workers)
{
    return MoveSearch(study, task, workers).answer();
}

MoveMap move_map(const Study& study, const MoveLampTask& task, const Workers& workers)
{
    Mover mover(study, task, workers);
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
