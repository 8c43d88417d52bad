#include "input/rest_surfaces.h"

#include "input/read_chord.h"

namespace glim {

namespace {

std::vector<std::uint32_t> facets_left(const std::vector<SurfaceDraft>& surfaces, std::size_t mesh,
                                       std::size_t facets)
{
    std::vector<bool> taken(facets);
    for (const SurfaceDraft& draft : surfaces)
        if (draft.mesh == mesh)
            for (const std::uint32_t facet : draft.facets)
                taken[facet] = true;
    std::vector<std::uint32_t> left;
    for (std::uint32_t i = 0; i < facets; ++i)
        if (!taken[i])
            left.push_back(i);
    return left;
}

Warning told(const MeshDraft& mesh, std::size_t left, std::size_t all, bool mirrored)
{
    return {
        mesh.place,
        std::to_string(left) + " of " + std::to_string(all) + " facets of mesh `" +
            mesh.source.name + "` belong to no surface; they count as opaque" +
            (mirrored ? ", with a twin on the other side" : ""),
        "select them by a [[surface]] if they are clear, lit, to be ignored or there once only"};
}

} // namespace

std::vector<Surface> rest_surfaces(const std::vector<SurfaceDraft>& surfaces,
                                   const std::vector<MeshDraft>& meshes, const Vehicle& vehicle,
                                   std::vector<Warning>& warnings)
{
    const bool mirrored = vehicle.modelled_side != Side::median;
    std::vector<Surface> rests;
    for (std::size_t i = 0; i < meshes.size(); ++i) {
        if (!meshes[i].placed)
            continue;
        const TriangleMesh& mesh = meshes[i].placed->mesh;
        const std::vector<std::uint32_t> left = facets_left(surfaces, i, mesh.facets.size());
        if (left.empty())
            continue;
        Surface rest{.name = std::string(rest_prefix) + meshes[i].source.name,
                     .role = Role::opaque,
                     .mirror = mirrored ? MirrorRule::yes : MirrorRule::no,
                     .mesh = part_of(mesh, left),
                     .clear_for = {}};
        const Chord& chord = meshes[i].source.chord;
        rest.chord = chord.estimated ? chord_of(rest.mesh, std::nullopt) : chord;
        rests.push_back(std::move(rest));
        warnings.push_back(told(meshes[i], left.size(), mesh.facets.size(), mirrored));
    }
    return rests;
}

} // namespace glim
