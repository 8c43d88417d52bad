#include "geometry/mesh_health.h"

#include "geometry/edge_uses.h"

#include <Eigen/Geometry>

#include <algorithm>
#include <compare>

namespace glim {

namespace {

/// Three numbers to be brought together with their like.
struct Key {
    std::uint32_t first, second, third;
    friend auto operator<=>(const Key&, const Key&) = default;
};

/// In order. The first number, a point's, is sorted by counting: few keys share it.
std::vector<Key> in_order(const std::vector<Key>& keys, std::size_t points)
{
    std::vector<std::size_t> start_of(points + 1, 0);
    for (const Key& key : keys)
        ++start_of[key.first + 1];
    for (std::size_t p = 0; p < points; ++p)
        start_of[p + 1] += start_of[p];

    std::vector<std::size_t> next = start_of;
    std::vector<Key> sorted(keys.size());
    for (const Key& key : keys)
        sorted[next[key.first]++] = key;
    for (std::size_t p = 0; p < points; ++p)
        std::sort(sorted.begin() + static_cast<std::ptrdiff_t>(start_of[p]),
                  sorted.begin() + static_cast<std::ptrdiff_t>(start_of[p + 1]));
    return sorted;
}

std::size_t duplicates_in(const TriangleMesh& mesh)
{
    std::vector<Key> keys;
    keys.reserve(mesh.facets.size());
    for (Facet f : mesh.facets) {
        std::sort(f.begin(), f.end());
        keys.push_back({f[0], f[1], f[2]});
    }
    const std::vector<Key> sorted = in_order(keys, mesh.points.size());
    std::size_t count = 0;
    for (std::size_t i = 1; i < sorted.size(); ++i)
        count += sorted[i] == sorted[i - 1] ? 1 : 0;
    return count;
}

void count_edges(const TriangleMesh& mesh, MeshHealth& health)
{
    const std::vector<EdgeUse> uses = edge_uses(mesh);
    for (std::size_t begin = 0, end = 0; begin < uses.size(); begin = end) {
        while (end < uses.size() && uses[end].same_edge(uses[begin]))
            ++end;
        const std::size_t count = end - begin;
        health.boundary_edges += count == 1 ? 1 : 0;
        health.non_manifold_edges += count > 2 ? 1 : 0;
        health.winding_conflicts +=
            count == 2 && uses[begin].forward == uses[end - 1].forward ? 1 : 0;
    }
}

} // namespace

bool is_degenerate(const TriangleMesh& mesh, std::size_t facet)
{
    const Point& a = mesh.corner(facet, 0);
    const Vector b = mesh.corner(facet, 1) - a;
    const Vector c = mesh.corner(facet, 2) - a;
    const double longest = std::max({b.norm(), c.norm(), (c - b).norm()});
    const double farthest = a.cwiseAbs().maxCoeff() + longest;
    // A corner is rounded to half a unit in the last place on each axis: about as far as that it
    // may stand beside the line that it was meant to lie on. Four units leave room for products.
    const double grain = 4 * std::numeric_limits<double>::epsilon() * farthest;
    return b.cross(c).norm() <= grain * longest;
}

MeshHealth health_of(const TriangleMesh& mesh)
{
    MeshHealth health;
    health.facets = mesh.facets.size();
    health.points = mesh.points.size();
    for (std::size_t f = 0; f < mesh.facets.size(); ++f)
        health.degenerate += is_degenerate(mesh, f) ? 1 : 0;
    health.duplicate = duplicates_in(mesh);
    count_edges(mesh, health);
    const std::vector<std::uint32_t> components = components_of(mesh);
    if (!components.empty())
        health.components = *std::max_element(components.begin(), components.end()) + 1U;
    return health;
}

} // namespace glim
