#include "visibility/facet_hits.h"

#include <algorithm>
#include <tuple>

namespace glim {

void keep_first_of_every_part(std::vector<FacetHit>& met, float tie)
{
    if (met.size() < 2)
        return;
    std::sort(met.begin(), met.end(), [](const FacetHit& a, const FacetHit& b) {
        return std::tie(a.part, a.distance, a.facet) < std::tie(b.part, b.distance, b.facet);
    });
    auto kept = met.begin();
    for (auto hit = met.begin(); hit != met.end();) {
        FacetHit first = *hit;
        const float reach = first.distance + tie;
        for (; hit != met.end() && hit->part == first.part; ++hit)
            if (hit->distance <= reach)
                first.facet = std::min(first.facet, hit->facet);
        *kept++ = first;
    }
    met.erase(kept, met.end());
}

std::size_t first_of(std::span<const FacetHit> hits, float tie)
{
    const auto nearest = std::min_element(hits.begin(), hits.end(), is_nearer);
    const auto first = std::find_if(hits.begin(), hits.end(), [&](const FacetHit& hit) {
        return hit.distance <= nearest->distance + tie;
    });
    return static_cast<std::size_t>(first - hits.begin());
}

std::span<const FacetHit> only_first(std::span<const FacetHit> hits, float tie)
{
    return hits.empty() ? hits : hits.subspan(first_of(hits, tie), 1);
}

} // namespace glim
