#include "visibility/prepared_scene.h"

#include "geometry/weld.h"
#include "machine/stop.h"
#include "visibility/cell_brightness.h"

#include <algorithm>
#include <set>

namespace glim {

namespace {

Point mean_of_lit_centres(const Study& study)
{
    Point sum = Point::Zero();
    int count = 0;
    for (const Lamp& lamp : study.lamps)
        for (const SurfaceId s : lamp.emits) {
            sum += box_of(study.surfaces[s].mesh).centre();
            ++count;
        }
    return count == 0 ? sum : Point(sum / count);
}

void append(TriangleMesh& to, const TriangleMesh& from)
{
    const auto shift = static_cast<std::uint32_t>(to.points.size());
    to.points.insert(to.points.end(), from.points.begin(), from.points.end());
    for (const Facet& f : from.facets)
        to.facets.push_back({f[0] + shift, f[1] + shift, f[2] + shift});
}

/// Files repeat faces. Two lit faces in one place send light once, whichever way the second is
/// wound. Of each facet whether it is the first.
std::vector<bool> first_of_their_kind(const std::vector<Facet>& facets)
{
    std::set<Facet> known;
    std::vector<bool> first;
    first.reserve(facets.size());
    for (Facet facet : facets) {
        std::sort(facet.begin(), facet.end());
        first.push_back(known.insert(facet).second);
    }
    return first;
}

template <class Value>
void keep(std::vector<Value>& values, const std::vector<bool>& kept)
{
    std::size_t i = 0;
    std::erase_if(values, [&](const Value&) { return !kept[i++]; });
}

bool names(const std::vector<SurfaceId>& list, SurfaceId surface)
{
    return std::find(list.begin(), list.end(), surface) != list.end();
}

} // namespace

PreparedScene::PreparedScene(const Study& study, const Workers& workers)
    : study_(study), origin_(mean_of_lit_centres(study))
{
    bodies_ = Slots<SurfaceId, Body>(study.surfaces.size());
    const std::vector<SurfaceId> all = bodies_.ids();
    if (!for_each_index(all.size(), workers.silent(),
                        [&](std::size_t i, unsigned) { prepare(all[i]); }))
        throw Stopped();
}

void PreparedScene::prepare(SurfaceId surface)
{
    bodies_[surface].part = std::make_shared<PreparedPart>(mesh_of(surface), -origin_);
}

const TriangleMesh& PreparedScene::mesh_of(SurfaceId surface) const
{
    const Body& body = bodies_[surface];
    return body.replaced ? *body.replaced : study_.surfaces[surface].mesh;
}

void PreparedScene::replace(SurfaceId surface, TriangleMesh mesh)
{
    bodies_[surface].replaced = std::move(mesh);
    prepare(surface);
}

void PreparedScene::place(SurfaceId surface, const Placement& placement)
{
    bodies_[surface].placement = placement;
}

bool PreparedScene::blocks(SurfaceId surface, LampId lamp) const
{
    const Surface& s = study_.surfaces[surface];
    return s.blocks() &&
           std::find(s.clear_for.begin(), s.clear_for.end(), lamp) == s.clear_for.end();
}

bool PreparedScene::is_approved(const Standing& standing, const LampStanding& lamp) const
{
    // Only the lamp's own housing came with it, not its twin's on the other side.
    if (standing.twin != lamp.twin &&
        study_.surfaces[standing.surface].mirror != MirrorRule::straddles)
        return false;
    const Lamp& l = study_.lamps[lamp.lamp];
    return names(l.emits, standing.surface) ||
           (lamp.obstacles != Obstacles::approved_too && names(l.approved_with, standing.surface));
}

std::vector<Standing> PreparedScene::obstacles_of(const LampStanding& lamp) const
{
    std::vector<Standing> all;
    for (const SurfaceId s : study_.surfaces.ids()) {
        if (!blocks(s, lamp.lamp))
            continue;
        all.push_back({s, false});
        if (study_.surfaces[s].mirror == MirrorRule::yes)
            all.push_back({s, true});
    }
    if (lamp.obstacles == Obstacles::without_approved)
        std::erase_if(all, [&](const Standing& s) {
            return is_approved(s, lamp) && !names(study_.lamps[lamp.lamp].emits, s.surface);
        });
    return all;
}

Placement PreparedScene::placement_of(const Standing& standing) const
{
    const Placement& drawn = bodies_[standing.surface].placement;
    return standing.twin ? study_.vehicle.across_median() * drawn : drawn;
}

Placement PreparedScene::in_scene(const Standing& standing, const Placement& placement) const
{
    const Placement where = standing.twin ? study_.vehicle.across_median() * placement : placement;
    return Placement::shift(-origin_) * where * Placement::shift(origin_);
}

Placement PreparedScene::scene_placement_of(const Standing& standing) const
{
    return in_scene(standing, bodies_[standing.surface].placement);
}

Caster PreparedScene::caster_of(const std::vector<Standing>& standings) const
{
    std::vector<PlacedPart> parts;
    parts.reserve(standings.size());
    for (const Standing& s : standings)
        parts.push_back({bodies_[s.surface].part, scene_placement_of(s)});
    return Caster(std::move(parts));
}

PreparedScene::LitSurface PreparedScene::lit_parts_of(const LampStanding& lamp,
                                                      std::span<const SurfaceId> emits) const
{
    LitSurface lit;
    for (std::uint32_t i = 0; i < emits.size(); ++i) {
        append(lit.mesh, placed(mesh_of(emits[i]), placement_of({emits[i], lamp.twin})));
        lit.of.resize(lit.mesh.facets.size(), i);
    }
    lit.mesh = welded(lit.mesh);
    const std::vector<bool> first = first_of_their_kind(lit.mesh.facets);
    keep(lit.mesh.facets, first);
    keep(lit.of, first);
    return lit;
}

TriangleMesh PreparedScene::lit_surface_of(const LampStanding& lamp) const
{
    return lit_surface_of(lamp, study_.lamps[lamp.lamp].emits);
}

TriangleMesh PreparedScene::lit_surface_of(const LampStanding& lamp,
                                           std::span<const SurfaceId> of) const
{
    return lit_parts_of(lamp, of).mesh;
}

std::vector<PlacedMesh> PreparedScene::meshes_of(const std::vector<Standing>& standings) const
{
    std::vector<PlacedMesh> meshes;
    meshes.reserve(standings.size());
    for (const Standing& s : standings)
        meshes.push_back({&mesh_of(s.surface), placement_of(s)});
    return meshes;
}

Direction PreparedScene::axis_of(const LampStanding& lamp) const
{
    const Direction drawn = study_.lamps[lamp.lamp].axis.value_or(study_.vehicle.forward);
    return lamp.twin ? study_.vehicle.across_median()(drawn) : drawn;
}

LampView PreparedScene::view_of(const LampStanding& lamp, const Sampling& sampling) const
{
    const LitSurface parts = lit_parts_of(lamp, study_.lamps[lamp.lamp].emits);
    const TriangleMesh lit = placed(parts.mesh, Placement::shift(-origin_));
    const std::vector<Standing> all = obstacles_of(lamp);
    std::vector<Standing> approved;
    std::vector<Standing> others;
    for (const Standing& s : all)
        (is_approved(s, lamp) ? approved : others).push_back(s);
    LampView view{LitLattice(lit, sampling.feature),
                  LitOutline(lit),
                  caster_of(all),
                  caster_of(approved),
                  caster_of(others),
                  sampling.touch};
    if (const LampLight* light = study_.light_of(lamp.lamp))
        view.brightness =
            cell_brightness(light->brightness, {view.lattice, lit, parts.of, axis_of(lamp),
                                                study_.vehicle.up, lamp.twin});
    return view;
}

std::vector<PlacedMesh> PreparedScene::placed_obstacles_of(const LampStanding& lamp) const
{
    std::vector<PlacedMesh> obstacles;
    for (const Standing& s : obstacles_of(lamp)) {
        const bool lit = s.twin == lamp.twin && names(study_.lamps[lamp.lamp].emits, s.surface);
        obstacles.push_back({&mesh_of(s.surface), placement_of(s), is_approved(s, lamp), lit});
    }
    return obstacles;
}

Certificate PreparedScene::certificate_of(const LampStanding& lamp, const LampView& view,
                                          std::span<const Direction> directions,
                                          const Workers& workers) const
{
    return {view, placed_obstacles_of(lamp), origin_, directions, workers};
}

ExactView PreparedScene::exact_view_of(const LampStanding& lamp, Length touch) const
{
    return {lit_surface_of(lamp), placed_obstacles_of(lamp), touch};
}

std::array<Point, 3> PreparedScene::facet_of(const Standing& standing, std::uint32_t facet) const
{
    const Placement where = placement_of(standing);
    const TriangleMesh& mesh = mesh_of(standing.surface);
    return {where(mesh.corner(facet, 0)), where(mesh.corner(facet, 1)),
            where(mesh.corner(facet, 2))};
}

bool PreparedScene::is_symmetric() const
{
    return std::all_of(study_.surfaces.begin(), study_.surfaces.end(),
                       [](const Surface& s) { return !s.blocks() || s.mirror == MirrorRule::yes; });
}

} // namespace glim
