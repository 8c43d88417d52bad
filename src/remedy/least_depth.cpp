#include "remedy/least_depth.h"

#include "machine/stop.h"

#include <algorithm>

namespace glim {

namespace {

/// A fixed part may hide so much of a lamp of which everything is wanted: what is sampled on both
/// sides of its rim differs by less.
constexpr double rim_share = 1e-3;

std::vector<LitPiece> pieces_of(const std::vector<SightNeeds>& needs)
{
    std::vector<LitPiece> pieces;
    for (const SightNeeds& each : needs)
        pieces.insert(pieces.end(), each.pieces.begin(), each.pieces.end());
    return pieces;
}

DemandDepth depth_of(const ReliefDemand& demand, const std::vector<SightNeeds>& needs,
                     const std::optional<Length>& max_depth)
{
    const std::vector<LitPiece> pieces = pieces_of(needs);
    DemandDepth depth;
    depth.seen_mm2 = area_freed(pieces, 0);
    depth.most_mm2 = area_freed(pieces, no_depth / 2);
    depth.needed_mm2 = in_mm2(demand.needed);
    if (demand.everything && depth.most_mm2 >= (1 - rim_share) * depth.needed_mm2)
        depth.needed_mm2 = std::min(depth.needed_mm2, depth.most_mm2);
    depth.depth_mm = depth_that_frees(pieces, depth.needed_mm2);
    depth.within_mm2 = max_depth ? area_freed(pieces, in_mm(*max_depth)) : depth.most_mm2;
    depth.seen_from_under = std::any_of(
        needs.begin(), needs.end(), [](const SightNeeds& each) { return each.seen_from_under; });
    return depth;
}

} // namespace

std::vector<SightNeeds> needs_of(const ReliefGround& ground, const ReliefDemand& demand,
                                 const LampLook& look)
{
    std::vector<SightNeeds> needs;
    for (const std::size_t eye : ground.eyes_of(look))
        needs.push_back(
            sight_needs(ground.eyes()[eye], demand.toward, ground.study().relief.spare));
    return needs;
}

std::vector<DemandDepth> demand_depths(const ReliefGround& ground,
                                       const std::vector<ReliefDemand>& demands,
                                       const Findings& findings, const Workers& workers)
{
    std::vector<DemandDepth> depths(demands.size());
    const bool whole = for_each_index(demands.size(), workers, [&](std::size_t i, unsigned) {
        depths[i] =
            depth_of(demands[i], needs_of(ground, demands[i], findings.looks[demands[i].look]),
                     ground.study().relief.max_depth);
    });
    if (!whole)
        throw Stopped();
    return depths;
}

} // namespace glim
