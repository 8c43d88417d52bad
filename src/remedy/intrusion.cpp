#include "remedy/intrusion.h"

#include "geometry/facet_tree.h"
#include "geometry/point_normals.h"
#include "geometry/weld.h"
#include "remedy/refine_surface.h"
#include "remedy/way_to_space.h"

#include <algorithm>
#include <array>

namespace glim {

namespace {

/// 12 halvings make 2 m facets 0.5 mm small.
constexpr int most_rounds = 24;

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
            const std::array corners = {mesh.corner(f, 0), mesh.corner(f, 1), mesh.corner(f, 2)};
            numbered.of[f] = set.may_meet(corners) ? 0 : 1;
            marked[f] = numbered.of[f] == 0 && size > in_mm(intrusion_grain) ? 1 : 0;
            any = any || marked[f] == 1;
        }
        if (!any)
            break;
        numbered = with_halved_edges(numbered, marked, Direction::z());
    }
    return std::move(numbered.mesh);
}

} // namespace

std::optional<Intrusion> intrusion_of(const SurfaceAsked& asked, const ClearSpace& space)
{
    const KeepClearSet& set = space.set;
    const TriangleMesh level = divided(space.frame.into(asked.mesh), set);
    const std::vector<Vector> normals = point_normals(level);
    const FacetTree lit_tree(space.lit);
    Intrusion found;
    found.surface = asked.surface;
    found.depths.assign(level.points.size(), Length());
    for (std::size_t p = 0; p < level.points.size(); ++p) {
        if (!set.holds(level.points[p]) || lit_tree.nearest(level.points[p], space.skipped))
            continue;
        found.depths[p] = way_out(level.points[p], -normals[p], set);
        const Point place = space.frame.out_of(level.points[p]);
        found.box.add(place);
        if (found.depths[p] > found.depth) {
            found.depth = found.depths[p];
            found.deepest = place;
        }
    }
    if (found.depth == Length())
        return std::nullopt;
    found.mesh = space.frame.out_of(level);
    return found;
}

} // namespace glim
