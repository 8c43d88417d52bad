#include "input/take_facets.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace glim {

namespace {

constexpr std::uint32_t nobody = ~std::uint32_t(0);

std::string whole_mm(const Point& p)
{
    return "[" + std::to_string(std::lround(p.x())) + ", " + std::to_string(std::lround(p.y())) +
           ", " + std::to_string(std::lround(p.z())) + "]";
}

std::string whole_mm(const Box& box)
{
    return whole_mm(box.least) + " and " + whole_mm(box.most) + " mm";
}

void choose(SurfaceDraft& draft, const NamedMesh& mesh, const Vehicle& vehicle,
            Complaints& complaints)
{
    if (complain_of_idle_patterns(mesh, draft.selection, complaints) > 0)
        return;
    draft.facets = selected_facets(mesh, draft.selection, vehicle);
    draft.surface.mesh = part_of(mesh.mesh, draft.facets);
    if (draft.facets.empty())
        complaints.add(draft.place, "[[surface]] `" + draft.surface.name + "` selects no facet",
                       "no facet fits all its keys at once; in the vehicle's axes this mesh lies "
                       "between " +
                           whole_mm(box_of(mesh.mesh)));
}

/// Marks the facets as this surface's; complains once for each surface that has some already.
void claim(std::vector<SurfaceDraft>& drafts, std::uint32_t claimant,
           std::vector<std::uint32_t>& owner, Complaints& complaints)
{
    std::map<std::uint32_t, std::size_t> shared_with;
    for (const std::uint32_t facet : drafts[claimant].facets)
        if (owner[facet] == nobody)
            owner[facet] = claimant;
        else
            ++shared_with[owner[facet]];
    for (const auto& [other, count] : shared_with)
        complaints.add(drafts[claimant].place,
                       "[[surface]] `" + drafts[claimant].surface.name + "` selects " +
                           std::to_string(count) + " facets that `" + drafts[other].surface.name +
                           "` has already",
                       "narrow one of the two by object, group, material, side, box or "
                       "component_at");
}

void check_straddling(const SurfaceDraft& draft, const Vehicle& vehicle, Complaints& complaints)
{
    if (draft.surface.mirror != MirrorRule::straddles || draft.facets.empty())
        return;
    const Reach reach = reach_of(draft.surface.mesh, vehicle);
    if (reach.left < median_grain || reach.right < median_grain)
        complaints.add(draft.place,
                       "[[surface]] `" + draft.surface.name +
                           "` straddles the median plane in words only: it lies on one side",
                       "write mirror = \"yes\" or \"no\", or correct `median` of [vehicle]");
}

/// How far those surfaces of a mesh that have twins reach to either side; nothing if there are
/// none.
std::optional<Reach> reach_of_halves(const std::vector<SurfaceDraft>& surfaces, std::size_t mesh,
                                     const Vehicle& vehicle)
{
    std::optional<Reach> most;
    for (const SurfaceDraft& draft : surfaces) {
        if (draft.mesh != mesh || draft.surface.mirror != MirrorRule::yes || draft.facets.empty())
            continue;
        const Reach reach = reach_of(draft.surface.mesh, vehicle);
        most = most ? Reach{std::max(most->left, reach.left), std::max(most->right, reach.right)}
                    : reach;
    }
    return most;
}

/// Half a model lies on the modelled side, or something is the wrong way round.
void check_modelled_side(const std::vector<SurfaceDraft>& surfaces,
                         const std::vector<MeshDraft>& meshes, const Vehicle& vehicle,
                         Complaints& complaints)
{
    const bool left_half = vehicle.modelled_side == Side::left;
    for (std::size_t i = 0; i < meshes.size(); ++i) {
        const std::optional<Reach> reach = reach_of_halves(surfaces, i, vehicle);
        if (!reach || (left_half ? reach->left : reach->right) > median_grain ||
            (left_half ? reach->right : reach->left) <= median_grain)
            continue;
        complaints.add(meshes[i].place,
                       "all that has a twin in mesh `" + meshes[i].source.name + "` lies on the " +
                           (left_half ? "right" : "left") + ", but the " +
                           (left_half ? "left" : "right") + " half is modelled",
                       "correct `modelled_side`, `median`, `forward` or `up` of [vehicle], or "
                       "`forward` or `up` of the mesh");
    }
}

} // namespace

Reach reach_of(const TriangleMesh& mesh, const Vehicle& vehicle)
{
    Length least = vehicle.lateral(mesh.points.front()), most = least;
    for (const Point& p : mesh.points) {
        least = std::min(least, vehicle.lateral(p));
        most = std::max(most, vehicle.lateral(p));
    }
    return {most, -least};
}

void take_facets(std::vector<SurfaceDraft>& surfaces, const std::vector<MeshDraft>& meshes,
                 const Vehicle& vehicle, Complaints& complaints)
{
    std::vector<std::vector<std::uint32_t>> owners;
    owners.reserve(meshes.size());
    for (const MeshDraft& mesh : meshes)
        owners.emplace_back(mesh.placed ? mesh.placed->mesh.facets.size() : 0, nobody);
    for (std::uint32_t i = 0; i < surfaces.size(); ++i) {
        SurfaceDraft& draft = surfaces[i];
        if (!draft.mesh || !meshes[*draft.mesh].placed)
            continue;
        choose(draft, *meshes[*draft.mesh].placed, vehicle, complaints);
        claim(surfaces, i, owners[*draft.mesh], complaints);
        check_straddling(draft, vehicle, complaints);
        if (draft.orient == Orient::flip)
            draft.surface.mesh = turned_over(std::move(draft.surface.mesh));
    }
    if (vehicle.modelled_side != Side::median)
        check_modelled_side(surfaces, meshes, vehicle, complaints);
}

} // namespace glim
