#include "visibility/blame.h"

#include "visibility/lit_look.h"

#include <algorithm>
#include <numeric>

namespace glim {

namespace {

using FrontCorners = LitLook::FrontCorners;

/// The area that each front corner stands for; 0 for one that is seen.
std::vector<Area> hidden_areas(const LampView& view, const LitLook& look,
                               const FrontCorners& corners, const FacetHits& hits)
{
    LitLook::Hidden hidden(view.lattice.vertices().size());
    for (std::size_t ray = 0; ray < hits.rays(); ++ray)
        hidden[corners.vertices[ray]] = hits.of(ray).empty() ? 0 : 1;
    const std::vector<double> corner_mm2 = look.areas_of_mm2(hidden);
    const double all_mm2 = std::accumulate(corner_mm2.begin(), corner_mm2.end(), 0.0);
    std::vector<Area> areas(corners.vertices.size());
    if (all_mm2 == 0)
        return areas;
    // Corners stand for whole cells along the rim; together they may take what is hidden, no more.
    const double hidden_mm2 = look.bare_mm2() - look.shares(view.all, hidden).seen();
    const double scale = std::max(0.0, hidden_mm2) / all_mm2;
    for (std::size_t ray = 0; ray < areas.size(); ++ray)
        areas[ray] = square_millimetres(scale * corner_mm2[corners.vertices[ray]]);
    return areas;
}

} // namespace

Blame blame_toward(const LampView& view, const Direction& toward)
{
    const LitLook look(view, toward);
    const FrontCorners corners = look.front_corners();
    const FacetHits hits = view.all.first_hit_of_every_part(toward, corners.starts, view.touch);
    const std::vector<Area> areas = hidden_areas(view, look, corners, hits);
    const auto tie = static_cast<float>(in_mm(view.touch));
    Blame blame;
    blame.parts.resize(view.all.part_count());
    for (std::size_t ray = 0; ray < areas.size(); ++ray) {
        const std::span<const FacetHit> met = hits.of(ray);
        if (met.empty())
            continue;
        const std::size_t first = first_of(met, tie);
        for (std::size_t i = 0; i < met.size(); ++i) {
            TakenArea& part = blame.parts[met[i].part];
            (met.size() == 1 ? part.alone : part.jointly) += areas[ray];
            blame.facets.push_back({met[i].part, met[i].facet, i == first, areas[ray]});
        }
    }
    return blame;
}

std::vector<BlamedFacet> first_blamed_toward(const LampView& view, const Direction& toward)
{
    const LitLook look(view, toward);
    const FrontCorners corners = look.front_corners();
    const FacetHits hits = view.all.first_hit(toward, corners.starts, view.touch);
    const std::vector<Area> areas = hidden_areas(view, look, corners, hits);
    std::vector<BlamedFacet> facets;
    for (std::size_t ray = 0; ray < areas.size(); ++ray)
        for (const FacetHit& hit : hits.of(ray))
            facets.push_back({hit.part, hit.facet, true, areas[ray]});
    return facets;
}

} // namespace glim
