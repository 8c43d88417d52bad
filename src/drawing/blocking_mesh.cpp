#include "drawing/blocking_mesh.h"

#include <algorithm>
#include <stdexcept>

namespace glim {

namespace {

/// Of all that is taken, the share whose facets have the full colour.
constexpr double share_at_full_colour = 0.1;

const Surface& surface_named(const std::string& name, const Study& study)
{
    const auto found = std::find_if(study.surfaces.begin(), study.surfaces.end(),
                                    [&](const Surface& s) { return s.name == name; });
    if (found == study.surfaces.end())
        throw std::logic_error("the study has no surface `" + name + "`");
    return *found;
}

bool meets(const Box& box, const TriangleMesh& mesh, std::size_t facet)
{
    Box around;
    for (int i = 0; i < 3; ++i)
        around.add(mesh.corner(facet, i));
    return (around.least.array() <= box.most.array()).all() &&
           (box.least.array() <= around.most.array()).all();
}

/// The facets around the patch, and those that take something wherever they are, in order.
std::vector<std::uint32_t> facets_kept(const TriangleMesh& mesh, const Blocker& blocker)
{
    const Vector margin = Vector::Constant(in_mm(kept_around));
    const Box around{blocker.patch.least - margin, blocker.patch.most + margin};
    std::vector<bool> kept(mesh.facets.size());
    for (std::size_t f = 0; f < mesh.facets.size(); ++f)
        kept[f] = meets(around, mesh, f);
    for (const FacetShare& share : blocker.facets)
        kept[share.facet] = true;
    std::vector<std::uint32_t> places;
    for (std::uint32_t f = 0; f < kept.size(); ++f)
        if (kept[f])
            places.push_back(f);
    return places;
}

BlockingSurface surface_of(const Blocker& blocker, const Study& study)
{
    const TriangleMesh& drawn = surface_named(blocker.surface, study).mesh;
    const TriangleMesh standing =
        blocker.twin ? placed(drawn, study.vehicle.across_median()) : drawn;
    BlockingSurface surface;
    surface.name = blocker.surface;
    surface.twin = blocker.twin;
    surface.facets = facets_kept(standing, blocker);
    surface.mesh = part_of(standing, surface.facets);
    surface.taken.resize(surface.facets.size());
    for (const FacetShare& share : blocker.facets) {
        const auto at = std::lower_bound(surface.facets.begin(), surface.facets.end(), share.facet);
        surface.taken[static_cast<std::size_t>(at - surface.facets.begin())] =
            share.mean ? share.mean->taken : share.at_worst.taken;
    }
    return surface;
}

/// mm2 taken a mm2 of facet; a facet without area that takes something cannot be.
double density(const BlockingSurface& surface, std::size_t facet)
{
    const double area_mm2 = area_vector(surface.mesh, facet).norm();
    return area_mm2 > 0 ? in_mm2(surface.taken[facet]) / area_mm2 : 0;
}

/// The density from which on a facet has the full colour; 0 where nothing is taken.
double full_density(const std::vector<BlockingSurface>& surfaces)
{
    std::vector<std::pair<double, Area>> all;
    Area sum;
    for (const BlockingSurface& surface : surfaces)
        for (std::size_t f = 0; f < surface.taken.size(); ++f)
            if (surface.taken[f] > Area()) {
                all.emplace_back(density(surface, f), surface.taken[f]);
                sum += surface.taken[f];
            }
    std::sort(all.begin(), all.end(), std::greater<>());
    Area gathered;
    for (const auto& [dense, taken] : all) {
        gathered += taken;
        if (gathered >= share_at_full_colour * sum)
            return dense;
    }
    return 0;
}

} // namespace

std::vector<BlockingSurface> blocking_surfaces(const LampVerdict& verdict, const Study& study)
{
    std::vector<BlockingSurface> surfaces;
    for (const Blocker& blocker : verdict.blockers)
        surfaces.push_back(surface_of(blocker, study));
    const double full = full_density(surfaces);
    for (BlockingSurface& surface : surfaces)
        for (std::size_t f = 0; f < surface.taken.size(); ++f)
            surface.strength.push_back(full > 0 ? std::min(1.0, density(surface, f) / full) : 0);
    return surfaces;
}

} // namespace glim
