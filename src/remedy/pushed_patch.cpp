#include "remedy/pushed_patch.h"

#include "geometry/edge_uses.h"
#include "geometry/weld.h"
#include "model/push.h"

#include <algorithm>

namespace glim {

namespace {

/// Two pushes nearer to each other than this are one.
constexpr double same_push = 1e-9;

bool names(const std::vector<SurfaceId>& list, SurfaceId surface)
{
    return std::find(list.begin(), list.end(), surface) != list.end();
}

/// Whether every lamp has both of them in its way, or neither, and as the same kind of thing.
bool stand_alike(const Study& study, SurfaceId a, SurfaceId b)
{
    const Surface& first = study.surfaces[a];
    const Surface& second = study.surfaces[b];
    return first.mirror == second.mirror && first.clear_for == second.clear_for &&
           first.blocks() == second.blocks() &&
           std::all_of(study.lamps.begin(), study.lamps.end(), [&](const Lamp& lamp) {
               return names(lamp.approved_with, a) == names(lamp.approved_with, b);
           });
}

Direction checked_push(const Surface& surface, const Study& study)
{
    const std::optional<Direction> push = push_of(surface);
    if (!push)
        refuse({study.file, 0, 0, {}},
               "the facets of reshapeable surface `" + surface.name +
                   "` look every way, so that no side of it is the inside",
               "write push = [x, y, z] in its [[surface]]");
    return *push;
}

void append(PushedPatch& patch, SurfaceId surface, const TriangleMesh& mesh)
{
    const auto shift = static_cast<std::uint32_t>(patch.mesh.points.size());
    const auto place = static_cast<std::uint32_t>(patch.surfaces.size());
    patch.surfaces.push_back(surface);
    patch.mesh.points.insert(patch.mesh.points.end(), mesh.points.begin(), mesh.points.end());
    for (const Facet& f : mesh.facets)
        patch.mesh.facets.push_back({f[0] + shift, f[1] + shift, f[2] + shift});
    patch.of.resize(patch.mesh.facets.size(), place);
}

PatchEdge edge_of(std::span<const EdgeUse> uses)
{
    PatchEdge edge{.from = uses[0].from, .to = uses[0].to, .first = uses[0].facet};
    if (uses.size() == 2) {
        edge.second = uses[1].facet;
        edge.runs_alike = uses[0].forward == uses[1].forward;
    }
    return edge;
}

std::vector<PatchEdge> edges_of(const TriangleMesh& mesh)
{
    const std::vector<EdgeUse> uses = edge_uses(mesh);
    std::vector<PatchEdge> edges;
    for (std::size_t i = 0; i < uses.size();) {
        std::size_t end = i + 1;
        while (end < uses.size() && uses[end].same_edge(uses[i]))
            ++end;
        edges.push_back(edge_of(std::span(uses).subspan(i, end - i)));
        i = end;
    }
    return edges;
}

} // namespace

std::vector<PushedPatch> pushed_patches(const Study& study)
{
    std::vector<PushedPatch> patches;
    for (const SurfaceId id : study.surfaces.ids()) {
        const Surface& surface = study.surfaces[id];
        if (!surface.reshape || !surface.blocks())
            continue;
        const Direction push = checked_push(surface, study);
        auto found = std::find_if(patches.begin(), patches.end(), [&](const PushedPatch& p) {
            return (p.push.vector() - push.vector()).norm() < same_push &&
                   stand_alike(study, p.surfaces.front(), id);
        });
        if (found == patches.end()) {
            patches.push_back({push, {}, {}, {}});
            found = patches.end() - 1;
        }
        append(*found, id, surface.mesh);
    }
    if (patches.empty())
        refuse({study.file, 0, 0, {}}, "no surface of the study may be reshaped",
               "write reshapeable = true in the [[surface]] that is to be pushed in");
    for (PushedPatch& patch : patches)
        patch.mesh = welded(patch.mesh);
    return patches;
}

TriangleMesh mesh_of(const TriangleMesh& mesh, const std::vector<std::uint32_t>& of,
                     std::uint32_t surface)
{
    std::vector<std::uint32_t> facets;
    for (std::uint32_t f = 0; f < of.size(); ++f)
        if (of[f] == surface)
            facets.push_back(f);
    return part_of(mesh, facets);
}

StandingPatch standing_patch(const PushedPatch& patch, std::size_t place, bool twin,
                             const Vehicle& vehicle, const Point& scene_origin)
{
    StandingPatch standing;
    standing.patch = place;
    standing.twin = twin;
    const Placement stands = twin ? vehicle.across_median() : Placement();
    standing.where = Placement::shift(-scene_origin) * stands;
    standing.push = stands(patch.push).vector();
    TriangleMesh mesh = placed(patch.mesh, standing.where);
    for (std::size_t f = 0; f < mesh.facets.size(); ++f)
        standing.normals.push_back(area_vector(mesh, f));
    standing.edges = edges_of(mesh);
    standing.points = std::move(mesh.points);
    standing.facets = std::move(mesh.facets);
    return standing;
}

} // namespace glim
