#include "remedy/relief_shape.h"

#include "geometry/edge_uses.h"
#include "units/trig.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

constexpr int most_halvings = 40;
/// An edge that leads across the push by less than this, of 1, stands along it.
constexpr double least_facing = 0.25;
/// What is pushed less than this counts as not touched; mm.
constexpr double touched_grain = 1e-4;

NumberedMesh divided_where_asked(const ReliefGround& ground, std::size_t patch,
                                 const ReliefPlan& plan, double edge_mm, const Workers& workers)
{
    NumberedMesh mesh{ground.patches()[patch].mesh, ground.patches()[patch].of};
    for (int round = 0; round < most_halvings; ++round) {
        const auto marked = asked_facets({ground, patch}, mesh.mesh, plan.asked, edge_mm, workers);
        if (std::find(marked.begin(), marked.end(), 1) == marked.end())
            break;
        mesh = with_halved_edges(mesh, marked, ground.patches()[patch].push);
    }
    return mesh;
}

/// Long facets that the slopes of the relief reach into.
std::vector<std::uint8_t> facets_on_slopes(const TriangleMesh& mesh, const Direction& push,
                                           const std::vector<double>& field, double edge_mm)
{
    std::vector<std::uint8_t> marked(mesh.facets.size(), 0);
    for (std::size_t f = 0; f < mesh.facets.size(); ++f) {
        const auto reached = [&](std::uint32_t p) { return std::isfinite(field[p]); };
        marked[f] = std::any_of(mesh.facets[f].begin(), mesh.facets[f].end(), reached) &&
                            longest_edge(mesh, f, push) > edge_mm
                        ? 1
                        : 0;
    }
    return marked;
}

ReshapedPatch reshaped_patch(const ReliefGround& ground, std::size_t patch, const ReliefPlan& plan,
                             const Workers& workers)
{
    const double edge = edge_for_relief(ground);
    const Direction& push = ground.patches()[patch].push;
    const FieldRules rules = field_rules(ground.study().relief);
    ReshapedPatch reshaped;
    reshaped.mesh = divided_where_asked(ground, patch, plan, edge, workers);
    for (int round = 0;; ++round) {
        reshaped.wanted =
            wanted_depths({ground, patch}, reshaped.mesh.mesh.points, plan.asked, edge, workers);
        const std::vector<double> field =
            cones_over(reshaped.mesh.mesh, push, reshaped.wanted, rules, blend_band(rules));
        const auto marked = facets_on_slopes(reshaped.mesh.mesh, push, field, edge);
        if (round == most_halvings || std::find(marked.begin(), marked.end(), 1) == marked.end())
            break;
        reshaped.mesh = with_halved_edges(reshaped.mesh, marked, push);
    }
    const std::vector<double> caps =
        depth_caps(reshaped.mesh.mesh, push, held_points(ground, patch, reshaped.mesh), rules,
                   plan.deepest_mm);
    reshaped.depths = faired_depths(reshaped.mesh.mesh, push, reshaped.wanted, caps, rules);
    return reshaped;
}

double facet_depth(const TriangleMesh& mesh, std::size_t f, const std::vector<double>& depths)
{
    const Facet& c = mesh.facets[f];
    return (depths[c[0]] + depths[c[1]] + depths[c[2]]) / 3;
}

bool is_touched(const Facet& f, const std::vector<double>& depths)
{
    return std::any_of(f.begin(), f.end(),
                       [&](std::uint32_t p) { return depths[p] > touched_grain; });
}

/// The steepest slope between two points of a facet, in the plane across the push. Edges that stand
/// along it say nothing.
double slope_on(const TriangleMesh& mesh, std::size_t f, const std::vector<double>& depths,
                const Direction& push)
{
    double steepest = 0;
    for (int i = 0; i < 3; ++i) {
        const std::uint32_t a = mesh.facets[f][i];
        const std::uint32_t b = mesh.facets[f][(i + 1) % 3];
        const Vector edge = mesh.points[b] - mesh.points[a];
        const double across = (edge - push.dot(edge) * push.vector()).norm();
        if (across > least_facing * edge.norm())
            steepest = std::max(steepest, std::abs(depths[a] - depths[b]) / across);
    }
    return steepest;
}

/// How far the edges of a patch's surfaces move at most, mm.
double deepest_edge(const ReshapedPatch& reshaped)
{
    double deepest = 0;
    const std::vector<EdgeUse> uses = edge_uses(reshaped.mesh.mesh);
    for (std::size_t i = 0; i < uses.size(); ++i) {
        const bool shared = (i > 0 && uses[i].same_edge(uses[i - 1])) ||
                            (i + 1 < uses.size() && uses[i].same_edge(uses[i + 1]));
        if (!shared)
            deepest =
                std::max({deepest, reshaped.depths[uses[i].from], reshaped.depths[uses[i].to]});
    }
    return deepest;
}

struct Extent {
    double area = 0;   ///< mm2
    double volume = 0; ///< mm3
};

Extent extent_of(const TriangleMesh& mesh, const std::vector<double>& depths, const Direction& push)
{
    Extent extent;
    for (std::size_t f = 0; f < mesh.facets.size(); ++f) {
        if (!is_touched(mesh.facets[f], depths))
            continue;
        const Vector area = area_vector(mesh, f);
        extent.area += area.norm();
        extent.volume += std::abs(push.dot(area)) * facet_depth(mesh, f, depths);
    }
    return extent;
}

void add_surfaces(const PushedPatch& patch, const ReshapedPatch& reshaped, ReliefShape& shape)
{
    const TriangleMesh after = pushed_mesh(reshaped, patch.push);
    for (std::uint32_t s = 0; s < patch.surfaces.size(); ++s) {
        const TriangleMesh old = mesh_of(reshaped.mesh.mesh, reshaped.mesh.of, s);
        ReshapedSurface surface{
            patch.surfaces[s], patch.push, mesh_of(after, reshaped.mesh.of, s), {}};
        bool changed = false;
        for (std::size_t p = 0; p < old.points.size(); ++p) {
            surface.depths.push_back(
                millimetres(patch.push.dot(Vector(surface.mesh.points[p] - old.points[p]))));
            changed = changed || surface.depths.back() > millimetres(touched_grain);
        }
        if (changed)
            shape.surfaces.push_back(std::move(surface));
    }
}

void add_deepest(const Study& study, const PushedPatch& patch, const ReshapedPatch& reshaped,
                 ReliefShape& shape)
{
    const TriangleMesh& mesh = reshaped.mesh.mesh;
    for (std::size_t f = 0; f < mesh.facets.size(); ++f)
        for (const std::uint32_t p : mesh.facets[f]) {
            const Length depth = millimetres(reshaped.depths[p]);
            if (depth <= shape.deepest)
                continue;
            shape.deepest = depth;
            shape.deepest_before = mesh.points[p];
            shape.deepest_after = mesh.points[p] + reshaped.depths[p] * patch.push.vector();
            shape.deepest_surface = study.surfaces[patch.surfaces[reshaped.mesh.of[f]]].name;
        }
}

void add_box_and_slope(const PushedPatch& patch, const ReshapedPatch& reshaped, ReliefShape& shape)
{
    const TriangleMesh& mesh = reshaped.mesh.mesh;
    double slope = 0;
    for (std::size_t f = 0; f < mesh.facets.size(); ++f) {
        if (!is_touched(mesh.facets[f], reshaped.depths))
            continue;
        slope = std::max(slope, slope_on(mesh, f, reshaped.depths, patch.push));
        for (const std::uint32_t p : mesh.facets[f]) {
            shape.box.add(mesh.points[p]);
            shape.box.add(mesh.points[p] + reshaped.depths[p] * patch.push.vector());
        }
    }
    shape.steepest = std::max(shape.steepest, angle_of(slope, 1));
}

} // namespace

std::vector<ReshapedPatch> reshaped_patches(const ReliefGround& ground, const ReliefPlan& plan,
                                            const Workers& workers)
{
    std::vector<ReshapedPatch> reshaped;
    for (std::size_t p = 0; p < ground.patches().size(); ++p)
        reshaped.push_back(reshaped_patch(ground, p, plan, workers));
    return reshaped;
}

TriangleMesh pushed_mesh(const ReshapedPatch& reshaped, const Direction& push)
{
    TriangleMesh mesh = reshaped.mesh.mesh;
    for (std::size_t p = 0; p < mesh.points.size(); ++p)
        mesh.points[p] += reshaped.depths[p] * push.vector();
    return mesh;
}

ReliefShape shape_of(const ReliefGround& ground, const std::vector<ReshapedPatch>& reshaped)
{
    ReliefShape shape;
    for (std::size_t p = 0; p < reshaped.size(); ++p) {
        const PushedPatch& patch = ground.patches()[p];
        const Extent extent = extent_of(reshaped[p].mesh.mesh, reshaped[p].depths, patch.push);
        shape.touched += square_millimetres(extent.area);
        shape.volume += cubic_millimetres(extent.volume);
        shape.deepest_edge = std::max(shape.deepest_edge, millimetres(deepest_edge(reshaped[p])));
        add_surfaces(patch, reshaped[p], shape);
        add_deepest(ground.study(), patch, reshaped[p], shape);
        add_box_and_slope(patch, reshaped[p], shape);
    }
    return shape;
}

SlopeCost slope_cost(const ReliefGround& ground, const std::vector<ReshapedPatch>& reshaped,
                     double deepest_with_free_slopes_mm)
{
    SlopeCost cost;
    double deepest = 0;
    for (std::size_t p = 0; p < reshaped.size(); ++p) {
        const TriangleMesh& mesh = reshaped[p].mesh.mesh;
        const Direction& push = ground.patches()[p].push;
        const Extent with = extent_of(mesh, reshaped[p].depths, push);
        const Extent free = extent_of(mesh, reshaped[p].wanted, push);
        cost.touched += square_millimetres(with.area - free.area);
        cost.volume += cubic_millimetres(with.volume - free.volume);
        for (const double depth : reshaped[p].depths)
            deepest = std::max(deepest, depth);
    }
    cost.depth = millimetres(std::max(0.0, deepest - deepest_with_free_slopes_mm));
    return cost;
}

std::optional<RoomBehind> nearest_behind(const ReliefGround& ground, const PreparedScene& scene,
                                         const std::vector<ReshapedPatch>& reshaped)
{
    // Rays start where the surface was, so that what it was pushed through is found too.
    constexpr float skip = 0.01F;
    std::vector<Standing> fixed;
    for (const SurfaceId id : ground.study().surfaces.ids()) {
        const Surface& surface = ground.study().surfaces[id];
        if (surface.reshape || surface.lit_part_of || surface.role == Role::ignored)
            continue;
        fixed.push_back({id, false});
        if (surface.mirror == MirrorRule::yes)
            fixed.push_back({id, true});
    }
    const Caster caster = scene.caster_of(fixed);
    std::optional<RoomBehind> nearest;
    for (std::size_t p = 0; p < reshaped.size(); ++p) {
        const Direction& push = ground.patches()[p].push;
        std::vector<std::size_t> points;
        std::vector<RayStart> starts;
        for (std::size_t i = 0; i < reshaped[p].depths.size(); ++i) {
            if (reshaped[p].depths[i] <= touched_grain)
                continue;
            const Point at = reshaped[p].mesh.mesh.points[i] - ground.origin();
            points.push_back(i);
            starts.push_back({static_cast<float>(at.x()), static_cast<float>(at.y()),
                              static_cast<float>(at.z()), skip});
        }
        const std::vector<NearestHit> hits = caster.nearest_hit(push, starts);
        for (std::size_t i = 0; i < hits.size(); ++i) {
            const double depth = reshaped[p].depths[points[i]];
            if (!hits[i].any() || (nearest && hits[i].distance - depth >= in_mm(nearest->distance)))
                continue;
            const Standing& hit = fixed[hits[i].part];
            nearest = RoomBehind{millimetres(hits[i].distance - depth),
                                 ground.study().surfaces[hit.surface].name,
                                 reshaped[p].mesh.mesh.points[points[i]] + depth * push.vector()};
        }
    }
    return nearest;
}

} // namespace glim
