#include "remedy/part_choice.h"

#include <array>

namespace glim {

namespace {

constexpr std::array edges = {FavouredEdge::upper, FavouredEdge::lower, FavouredEdge::inner,
                              FavouredEdge::outer};

} // namespace

std::optional<PartNeeded> part_needed(const Criterion& criterion)
{
    if (const auto* least = std::get_if<LeastArea>(&criterion))
        return PartNeeded{least->area, 0};
    if (const auto* hidden = std::get_if<MostHidden>(&criterion))
        return PartNeeded{{}, 1 - hidden->share};
    if (std::holds_alternative<NoObstacle>(criterion))
        return PartNeeded{{}, 1};
    return std::nullopt;
}

PartChoice chosen_part(const TriangleMesh& lit, const PartAsked& asked, const KeepClearWish& wish,
                       const SpaceReach& reach, const std::stop_token& stop)
{
    if (asked.needed.share >= 1)
        return {whole_parts(asked.field), true};
    if (wish.favour != FavouredEdge::least_volume)
        return {kept_parts(lit, asked.field, asked.needed, wish.favour, wish.part_step)};
    PartChoice choice;
    Volume smallest;
    for (const FavouredEdge edge : edges) {
        KeptParts kept = kept_parts(lit, asked.field, asked.needed, edge, wish.part_step);
        const Volume volume =
            about_volume(KeepClearSet(sheaves_of(lit, kept), reach.levels), reach, stop);
        if (choice.by_edge.empty() || volume < smallest) {
            choice.kept = std::move(kept);
            smallest = volume;
        }
        choice.by_edge.push_back(volume);
    }
    return choice;
}

} // namespace glim
