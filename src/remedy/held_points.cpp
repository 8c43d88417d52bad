#include "geometry/edge_uses.h"
#include "remedy/relief_plan.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// Half a model ends on the median plane within this; trimmed edges lie off it by a fraction.
constexpr Length end_on_median = millimetres(1);
/// A push that leads sideways by so little, of 1, is taken as along the median plane.
constexpr double sideways_grain = 1e-9;

bool overlap(const Box& a, const Box& b)
{
    return (a.least.array() <= b.most.array()).all() && (b.least.array() <= a.most.array()).all();
}

/// The boxes, and where a surface has a twin also their mirror images: what may not move on one
/// side may not on the other.
std::vector<Box> on_both_sides(const std::vector<Box>& boxes, const Surface& surface,
                               const Vehicle& vehicle)
{
    std::vector<Box> all = boxes;
    if (surface.mirror != MirrorRule::yes)
        return all;
    const Placement mirror = vehicle.across_median();
    for (const Box& box : boxes) {
        Box image;
        image.add(mirror(box.least));
        image.add(mirror(box.most));
        all.push_back(image);
    }
    return all;
}

/// Points on the median plane would leave their twins if they were pushed sideways.
void hold_on_median(const ReliefGround& ground, std::size_t patch, const TriangleMesh& mesh,
                    std::vector<std::uint8_t>& held)
{
    const Study& study = ground.study();
    const PushedPatch& pushed = ground.patches()[patch];
    if (study.surfaces[pushed.surfaces.front()].mirror != MirrorRule::yes ||
        std::abs(pushed.push.dot(study.vehicle.left())) <= sideways_grain)
        return;
    for (std::size_t p = 0; p < mesh.points.size(); ++p) {
        const Length off = study.vehicle.lateral(mesh.points[p]);
        if (-end_on_median <= off && off <= end_on_median)
            held[p] = 1;
    }
}

/// Facets as small as the relief's own are held whole where a box touches them.
void hold_untouched(const ReliefGround& ground, std::size_t patch, const NumberedMesh& numbered,
                    std::vector<std::uint8_t>& held)
{
    const Study& study = ground.study();
    const Surface& surface = study.surfaces[ground.patches()[patch].surfaces.front()];
    const Direction& push = ground.patches()[patch].push;
    const double small = 2 * edge_for_relief(ground);
    const TriangleMesh& mesh = numbered.mesh;
    for (const Box& box : on_both_sides(study.relief.untouched, surface, study.vehicle)) {
        for (std::size_t p = 0; p < mesh.points.size(); ++p)
            held[p] = held[p] != 0 || box.holds(mesh.points[p]) ? 1 : 0;
        for (std::size_t f = 0; f < mesh.facets.size(); ++f) {
            Box around;
            for (int i = 0; i < 3; ++i)
                around.add(mesh.corner(f, i));
            if (overlap(around, box) && longest_edge(mesh, f, push) <= small)
                for (const std::uint32_t p : mesh.facets[f])
                    held[p] = 1;
        }
    }
}

void hold_edges(const ReliefGround& ground, SurfaceId id, const TriangleMesh& mesh,
                std::vector<std::uint8_t>& held)
{
    const Study& study = ground.study();
    const Surface& surface = study.surfaces[id];
    const std::vector<Box> boxes =
        on_both_sides(surface.reshape->edges_fixed_in, surface, study.vehicle);
    const bool all = surface.reshape->all_edges_fixed;
    if (!all && boxes.empty())
        return;
    const std::vector<EdgeUse> uses = edge_uses(mesh);
    for (std::size_t i = 0; i < uses.size(); ++i) {
        const bool shared = (i > 0 && uses[i].same_edge(uses[i - 1])) ||
                            (i + 1 < uses.size() && uses[i].same_edge(uses[i + 1]));
        if (shared)
            continue;
        for (const std::uint32_t p : {uses[i].from, uses[i].to})
            if (all || std::any_of(boxes.begin(), boxes.end(),
                                   [&](const Box& box) { return box.holds(mesh.points[p]); }))
                held[p] = 1;
    }
}

} // namespace

std::vector<std::uint8_t> held_points(const ReliefGround& ground, std::size_t patch,
                                      const NumberedMesh& numbered)
{
    std::vector<std::uint8_t> held(numbered.mesh.points.size(), 0);
    hold_untouched(ground, patch, numbered, held);
    hold_on_median(ground, patch, numbered.mesh, held);
    const std::vector<SurfaceId>& surfaces = ground.patches()[patch].surfaces;
    for (std::uint32_t s = 0; s < surfaces.size(); ++s) {
        TriangleMesh own{numbered.mesh.points, {}};
        for (std::size_t f = 0; f < numbered.of.size(); ++f)
            if (numbered.of[f] == s)
                own.facets.push_back(numbered.mesh.facets[f]);
        hold_edges(ground, surfaces[s], own, held);
    }
    return held;
}

} // namespace glim
