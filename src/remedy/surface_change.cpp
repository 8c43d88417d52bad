#include "remedy/surface_change.h"

#include "geometry/facet_tree.h"
#include "machine/stop.h"

#include <algorithm>

namespace glim {

namespace {

template <class Things>
bool has_named(const Things& things, const std::string& name)
{
    return std::any_of(things.begin(), things.end(),
                       [&](const auto& thing) { return thing.name == name; });
}

bool alike(const TriangleMesh& a, const TriangleMesh& b)
{
    return a.facets == b.facets && a.points == b.points;
}

/// Points of a mesh that no facet uses are nowhere.
std::vector<bool> used_points(const TriangleMesh& mesh)
{
    std::vector<bool> used(mesh.points.size());
    for (const Facet& facet : mesh.facets)
        for (const std::uint32_t corner : facet)
            used[corner] = true;
    return used;
}

Length distance(const FacetTree& from, const Point& p)
{
    const std::optional<NearestFacet> nearest = from.nearest(p);
    return nearest ? nearest->distance : Length();
}

void look_at_corners(const TriangleMesh& mesh, const FacetTree& other, const Workers& workers,
                     SurfaceChange& change)
{
    const std::vector<bool> used = used_points(mesh);
    std::vector<Length> distances(mesh.points.size());
    if (!for_each_index(mesh.points.size(), workers, [&](std::size_t i, unsigned) {
            if (used[i])
                distances[i] = distance(other, mesh.points[i]);
        }))
        throw Stopped();
    const auto farthest = std::max_element(distances.begin(), distances.end());
    if (farthest == distances.end() || *farthest <= change.deepest)
        return;
    change.deepest = *farthest;
    change.where = mesh.points[static_cast<std::size_t>(farthest - distances.begin())];
}

void measure_between(const TriangleMesh& after, const FacetTree& before, const Workers& workers,
                     SurfaceChange& change)
{
    std::vector<Length> distances(after.facets.size());
    if (!for_each_index(after.facets.size(), workers, [&](std::size_t f, unsigned) {
            distances[f] = distance(
                before, (after.corner(f, 0) + after.corner(f, 1) + after.corner(f, 2)) / 3);
        }))
        throw Stopped();
    for (std::size_t f = 0; f < after.facets.size(); ++f) {
        if (distances[f] <= same_shape)
            continue;
        const double area = area_vector(after, f).norm();
        change.area += square_millimetres(area);
        change.volume += area * in_mm(distances[f]);
    }
}

SurfaceChange change_of(const Surface& before, const Surface& after, const Workers& workers)
{
    const FacetTree old_shape(before.mesh), new_shape(after.mesh);
    SurfaceChange change{.surface = after.name};
    look_at_corners(after.mesh, old_shape, workers, change);
    look_at_corners(before.mesh, new_shape, workers, change);
    measure_between(after.mesh, old_shape, workers, change);
    return change;
}

} // namespace

std::vector<SurfaceChange> surface_changes(const Study& before, const Study& after,
                                           const Workers& workers)
{
    std::vector<SurfaceChange> changes;
    for (const Surface& surface : after.surfaces) {
        const auto old =
            std::find_if(before.surfaces.begin(), before.surfaces.end(),
                         [&](const Surface& other) { return other.name == surface.name; });
        if (old == before.surfaces.end() || alike(old->mesh, surface.mesh))
            continue;
        SurfaceChange change = change_of(*old, surface, workers);
        if (change.deepest > same_shape)
            changes.push_back(std::move(change));
    }
    return changes;
}

std::vector<std::string> surfaces_added(const Study& before, const Study& after)
{
    std::vector<std::string> names;
    for (const Surface& surface : after.surfaces)
        if (!surface.lit_part_of && !has_named(before.surfaces, surface.name))
            names.push_back(surface.name);
    return names;
}

std::vector<std::string> lamps_added(const Study& before, const Study& after)
{
    std::vector<std::string> names;
    for (const Lamp& lamp : after.lamps)
        if (!has_named(before.lamps, lamp.name))
            names.push_back(lamp.name);
    return names;
}

} // namespace glim
