#include "judgement/surface_taken.h"

#include <algorithm>

namespace glim {

namespace {

std::size_t place_of(std::vector<SurfaceTaken>& taken, const Standing& standing)
{
    const auto found = std::find_if(taken.begin(), taken.end(), [&](const SurfaceTaken& known) {
        return known.standing.surface == standing.surface && known.standing.twin == standing.twin;
    });
    const auto place = static_cast<std::size_t>(found - taken.begin());
    if (found == taken.end())
        taken.push_back({.standing = standing, .area = {}, .facets = {}});
    return place;
}

} // namespace

void add_blame(std::vector<SurfaceTaken>& taken, const std::vector<Standing>& obstacles,
               const Blame& blame)
{
    std::vector<std::size_t> places;
    for (std::size_t part = 0; part < obstacles.size(); ++part) {
        places.push_back(place_of(taken, obstacles[part]));
        TakenArea& area = taken[places.back()].area;
        area.alone += blame.parts[part].alone;
        area.jointly += blame.parts[part].jointly;
    }
    for (const BlamedFacet& f : blame.facets)
        taken[places[f.part]].facets.push_back({f.facet, f.first, f.area});
}

} // namespace glim
