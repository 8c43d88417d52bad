#include "remedy/cutter_body.h"

#include "geometry/edge_uses.h"
#include "geometry/weld.h"

#include <algorithm>

namespace glim {

namespace {

/// The pushed facets, their corners numbered alike before and after.
struct PushedFacets {
    std::vector<Point> before, after;
    std::vector<Facet> facets;
};

PushedFacets pushed_facets(const ReshapedSurface& surface)
{
    PushedFacets pushed{points_before(surface), surface.mesh.points, {}};
    for (std::size_t p = 0; p < pushed.after.size(); ++p)
        if (surface.depths[p] <= unmoved)
            pushed.after[p] = pushed.before[p];
    for (const Facet& facet : surface.mesh.facets)
        if (std::any_of(facet.begin(), facet.end(),
                        [&](std::uint32_t p) { return surface.depths[p] > unmoved; }))
            pushed.facets.push_back(facet);
    return pushed;
}

void add_facet(const Point& a, const Point& b, const Point& c, TriangleMesh& mesh)
{
    const auto first = static_cast<std::uint32_t>(mesh.points.size());
    mesh.points.insert(mesh.points.end(), {a, b, c});
    mesh.facets.push_back({first, first + 1, first + 2});
}

/// A wall below an edge that one facet alone uses, where either of its ends moved.
void add_wall(const PushedFacets& pushed, std::uint32_t from, std::uint32_t to, TriangleMesh& mesh)
{
    const Point &a = pushed.before[from], &b = pushed.before[to];
    const Point &deep_a = pushed.after[from], &deep_b = pushed.after[to];
    if (deep_a != a)
        add_facet(a, deep_a, deep_b, mesh);
    if (deep_b != b)
        add_facet(a, deep_b, b, mesh);
}

} // namespace

std::vector<Point> points_before(const ReshapedSurface& surface)
{
    std::vector<Point> before = surface.mesh.points;
    for (std::size_t p = 0; p < before.size(); ++p)
        before[p] -= in_mm(surface.depths[p]) * surface.push.vector();
    return before;
}

TriangleMesh cutter_body(const ReshapedSurface& surface)
{
    const PushedFacets pushed = pushed_facets(surface);
    TriangleMesh body;
    for (const Facet& f : pushed.facets) {
        add_facet(pushed.before[f[0]], pushed.before[f[1]], pushed.before[f[2]], body);
        add_facet(pushed.after[f[0]], pushed.after[f[2]], pushed.after[f[1]], body);
    }
    const std::vector<EdgeUse> uses = edge_uses({pushed.before, pushed.facets});
    for (std::size_t i = 0; i < uses.size(); ++i) {
        const bool alone = (i == 0 || !uses[i - 1].same_edge(uses[i])) &&
                           (i + 1 == uses.size() || !uses[i + 1].same_edge(uses[i]));
        if (alone)
            add_wall(pushed, uses[i].forward ? uses[i].from : uses[i].to,
                     uses[i].forward ? uses[i].to : uses[i].from, body);
    }
    body = welded(body);
    return enclosed_mm3(body) < 0 ? turned_over(std::move(body)) : body;
}

double enclosed_mm3(const TriangleMesh& mesh)
{
    if (mesh.facets.empty())
        return 0;
    const Point near = mesh.corner(0, 0); // far from the origin, digits would be lost
    double six_volumes = 0;
    for (std::size_t f = 0; f < mesh.facets.size(); ++f)
        six_volumes += Vector(mesh.corner(f, 0) - near)
                           .dot(Vector(mesh.corner(f, 1) - near).cross(mesh.corner(f, 2) - near));
    return six_volumes / 6;
}

} // namespace glim
