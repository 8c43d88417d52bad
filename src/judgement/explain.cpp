#include "judgement/explain.h"

#include "judgement/blame_tally.h"
#include "judgement/uncovered.h"
#include "machine/stop.h"

#include <algorithm>

namespace glim {

namespace {

/// What directions take is kept until it is added in order, about half a megabyte each.
constexpr std::size_t directions_at_once = 64;

struct ToExplain {
    std::size_t at; ///< place in the look
    BlameTally::Counts counts;
};

/// The worst direction and those that are not met.
std::vector<ToExplain> directions_to_explain(const LampVerdict& verdict)
{
    std::vector<ToExplain> all;
    for (std::size_t i = 0; i < verdict.directions.size(); ++i) {
        const BlameTally::Counts counts{.worst = i == verdict.worst,
                                        .fails = verdict.directions[i].outcome != Outcome::met};
        if (counts.worst || counts.fails)
            all.push_back({verdict.directions[i].at, counts});
    }
    return all;
}

/// Many threads ask, one adds up in order: the sums are the same for any number of threads.
BlameTally tally_of(std::span<const ToExplain> directions, std::size_t place, const LampLook& look,
                    const Eyes& eyes, const Workers& workers)
{
    BlameTally tally;
    while (!directions.empty()) {
        const auto some = directions.first(std::min(directions.size(), directions_at_once));
        std::vector<std::vector<SurfaceTaken>> taken(some.size());
        const bool whole =
            for_each_index(some.size(), workers.silent(), [&](std::size_t i, unsigned) {
                taken[i] = eyes.taken(place, direction_of(look.toward[some[i].at], look.frame));
            });
        if (!whole)
            throw Stopped();
        for (std::size_t i = 0; i < some.size(); ++i)
            tally.add(some[i].counts, taken[i]);
        directions = directions.subspan(some.size());
    }
    return tally;
}

/// What every verdict's explanation needs.
struct Scenery {
    const Study& study;
    const PreparedScene& scene;
    const Eyes& eyes;
    const Workers& workers;
};

void add_blockers(LampVerdict& verdict, const std::vector<LampLook>& looks, const Scenery& in)
{
    if (verdict.directions.empty())
        return;
    const LampLook& look = looks[verdict.look];
    const std::vector<ToExplain> directions = directions_to_explain(verdict);
    verdict.blockers =
        tally_of(directions, verdict.look, look, in.eyes, in.workers).blockers(in.study, in.scene);
}

void add_uncovered(RowFindings& row, const std::vector<LampLook>& looks)
{
    const auto add = [&](LampVerdict& verdict) {
        if (!verdict.directions.empty())
            verdict.uncovered = uncovered_ranges(verdict, looks[verdict.look]);
    };
    for (LampVerdict& lamp : row.lamps)
        add(lamp);
    if (row.together)
        add(*row.together);
}

} // namespace

void explain(Findings& findings, const Study& study, const PreparedScene& scene, const Eyes& eyes,
             const Workers& workers)
{
    const Scenery in{study, scene, eyes, workers};
    for (CheckFindings& check : findings.checks)
        for (RowFindings& row : check.rows) {
            add_uncovered(row, findings.looks);
            if (!row.proof_from.empty()) // the row that asks for the proof tells what is in the way
                continue;
            for (LampVerdict& lamp : row.lamps)
                add_blockers(lamp, findings.looks, in);
            if (row.together)
                add_blockers(*row.together, findings.looks, in);
        }
}

} // namespace glim
