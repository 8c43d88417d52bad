#include "judgement/blocking_map.h"

#include "judgement/surface_taken.h"
#include "machine/stop.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// So many corners name who takes most; a tie between two is a border on the map anyway.
constexpr double corners_enough = 600;

/// A lamp and what stands in its way, looked at coarsely or finely.
struct Viewer {
    LampView coarse;
    std::optional<LampView> fine; ///< where that is something else
    std::vector<Standing> obstacles;
};

Viewer viewer_of(const Session& session, const LampStanding& lamp)
{
    const PreparedScene& scene = session.scene();
    Sampling sampling = session.study().sampling;
    const Length fine = sampling.feature;
    const Area lit = area_of(scene.lit_surface_of(lamp));
    const Length coarse = millimetres(std::sqrt(in_mm2(lit) / corners_enough));
    sampling.feature = std::max(fine, coarse);
    Viewer viewer{scene.view_of(lamp, sampling), std::nullopt, scene.obstacles_of(lamp)};
    if (sampling.feature > fine) {
        sampling.feature = fine;
        viewer.fine.emplace(scene.view_of(lamp, sampling));
    }
    return viewer;
}

/// The standing that takes most, if any takes something; the first among equals.
std::optional<Standing> taker(const std::vector<Viewer>& viewers, const Direction& toward,
                              bool finely)
{
    std::vector<SurfaceTaken> taken;
    for (const Viewer& v : viewers)
        add_blame(taken, v.obstacles, blame_toward(finely && v.fine ? *v.fine : v.coarse, toward));
    const auto most =
        std::max_element(taken.begin(), taken.end(),
                         [](const auto& a, const auto& b) { return a.area.sum() < b.area.sum(); });
    if (most == taken.end() || most->area.sum() <= Area())
        return std::nullopt;
    return most->standing;
}

std::vector<std::optional<Standing>> takers(const std::vector<Viewer>& viewers,
                                            const LampLook& look, const LampVerdict& verdict,
                                            const Workers& workers)
{
    std::vector<std::optional<Standing>> all(verdict.directions.size());
    const bool whole = for_each_index(all.size(), workers, [&](std::size_t i, unsigned) {
        const std::size_t at = verdict.directions[i].at;
        if (look.seen[at].lens - look.visible(at) < least_mapped)
            return;
        const Direction toward = direction_of(look.toward[at], look.frame);
        all[i] = taker(viewers, toward, false);
        if (!all[i])
            all[i] = taker(viewers, toward, true);
    });
    if (!whole)
        throw Stopped();
    return all;
}

bool same(const Standing& a, const Standing& b)
{
    return a.surface == b.surface && a.twin == b.twin;
}

struct Counted {
    Standing standing;
    std::size_t directions = 0;
};

/// By how many directions each takes most in; among equals by their place in the study.
std::vector<Counted> counted(const std::vector<std::optional<Standing>>& takers)
{
    std::vector<Counted> all;
    for (const std::optional<Standing>& t : takers) {
        if (!t)
            continue;
        auto found = std::find_if(all.begin(), all.end(),
                                  [&](const Counted& c) { return same(c.standing, *t); });
        if (found == all.end())
            found = all.insert(all.end(), {*t});
        ++found->directions;
    }
    std::sort(all.begin(), all.end(), [](const Counted& a, const Counted& b) {
        if (a.directions != b.directions)
            return a.directions > b.directions;
        return std::pair(a.standing.surface, a.standing.twin) <
               std::pair(b.standing.surface, b.standing.twin);
    });
    return all;
}

} // namespace

BlockingMap blocking_map(const Session& session, const LampLook& look, const LampVerdict& verdict,
                         const Workers& workers)
{
    std::vector<Viewer> viewers;
    for (const LampStanding& lamp : look.standings)
        viewers.push_back(viewer_of(session, lamp));
    const auto named = takers(viewers, look, verdict, workers);
    const std::vector<Counted> ranked = counted(named);
    BlockingMap map;
    for (const Counted& c : ranked)
        map.surfaces.push_back(
            {session.study().surfaces[c.standing.surface].name, c.standing.twin});
    for (const std::optional<Standing>& t : named) {
        map.most.emplace_back();
        if (t)
            map.most.back() = static_cast<std::size_t>(
                std::find_if(ranked.begin(), ranked.end(),
                             [&](const Counted& c) { return same(c.standing, *t); }) -
                ranked.begin());
    }
    return map;
}

} // namespace glim
