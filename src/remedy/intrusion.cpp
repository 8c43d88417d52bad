#include "remedy/intrusion.h"

#include "geometry/facet_tree.h"
#include "geometry/weld.h"
#include "remedy/refine_surface.h"

#include <algorithm>

namespace glim {

namespace {

/// 12 halvings make 2 m facets 0.5 mm small.
constexpr int most_rounds = 24;
constexpr double first_step_mm = 0.25;
constexpr double step_growth = 1.2;
constexpr double depth_grain_mm = 0.005;

/// Whether the facet cannot reach into the set: over it, it lies above or below all of it.
bool misses(const TriangleMesh& level, std::size_t f, const KeepClearSet& set)
{
    PlaneTriangle cell;
    for (int i = 0; i < 3; ++i)
        cell[i] = level.corner(f, i).head<2>();
    const CellSpan span = set.over(cell);
    bool above = true, below = true;
    for (int i = 0; i < 3; ++i) {
        above = above && level.corner(f, i).z() > span.top[i];
        below = below && level.corner(f, i).z() < span.bottom[i];
    }
    return !span.any || above || below;
}

/// Divided until facets that may reach into the set are small.
TriangleMesh divided(const TriangleMesh& level, const KeepClearSet& set)
{
    NumberedMesh numbered{welded(level), {}};
    numbered.of.assign(numbered.mesh.facets.size(), 0); // 0: not yet known to miss the set
    for (int round = 0; round < most_rounds; ++round) {
        const TriangleMesh& mesh = numbered.mesh;
        std::vector<std::uint8_t> marked(mesh.facets.size(), 0);
        bool any = false;
        for (std::size_t f = 0; f < mesh.facets.size(); ++f) {
            if (numbered.of[f] == 1)
                continue;
            double size = 0;
            for (int i = 0; i < 3; ++i)
                size = std::max(size, (mesh.corner(f, i) - mesh.corner(f, (i + 1) % 3)).norm());
            numbered.of[f] = misses(mesh, f, set) ? 1 : 0;
            marked[f] = numbered.of[f] == 0 && size > in_mm(intrusion_grain) ? 1 : 0;
            any = any || marked[f] == 1;
        }
        if (!any)
            break;
        numbered = with_halved_edges(numbered, marked, Direction::z());
    }
    return std::move(numbered.mesh);
}

std::vector<Vector> point_normals(const TriangleMesh& mesh)
{
    std::vector<Vector> normals(mesh.points.size(), Vector::Zero());
    for (std::size_t f = 0; f < mesh.facets.size(); ++f)
        for (const std::uint32_t p : mesh.facets[f])
            normals[p] += area_vector(mesh, f);
    for (Vector& n : normals)
        if (n.norm() > 0)
            n.normalize();
    return normals;
}

/// How far along `way` a point that is inside has to go to be out.
double way_out(const Point& from, const Vector& way, const KeepClearSet& set)
{
    double inside = 0, outside = 0, step = first_step_mm;
    do {
        inside = outside;
        outside += step;
        step *= step_growth;
        if (outside > in_mm(deepest_intrusion))
            return in_mm(deepest_intrusion);
    } while (set.holds(from + outside * way));
    while (outside - inside > depth_grain_mm) {
        const double middle = (inside + outside) / 2;
        (set.holds(from + middle * way) ? inside : outside) = middle;
    }
    return outside;
}

} // namespace

std::optional<Intrusion> intrusion_of(const SurfaceAsked& asked, const KeepClearSet& set,
                                      const LevelFrame& frame, const TriangleMesh& lit,
                                      Length skipped)
{
    const TriangleMesh level = divided(frame.into(asked.mesh), set);
    const std::vector<Vector> normals = point_normals(level);
    const FacetTree lit_tree(lit);
    Intrusion found;
    found.surface = asked.surface;
    found.depths.assign(level.points.size(), Length());
    for (std::size_t p = 0; p < level.points.size(); ++p) {
        if (!set.holds(level.points[p]) || lit_tree.nearest(level.points[p], skipped))
            continue;
        found.depths[p] = millimetres(way_out(level.points[p], -normals[p], set));
        const Point place = frame.out_of(level.points[p]);
        found.box.add(place);
        if (found.depths[p] > found.depth) {
            found.depth = found.depths[p];
            found.deepest = place;
        }
    }
    if (found.depth == Length())
        return std::nullopt;
    found.mesh = frame.out_of(level);
    return found;
}

} // namespace glim
