#include "geometry/edge_uses.h"

#include <algorithm>
#include <tuple>

namespace glim {

namespace {

bool has_equal_corners(const Facet& f) { return f[0] == f[1] || f[1] == f[2] || f[2] == f[0]; }

template <class Act>
void for_each_use(const TriangleMesh& mesh, const Act& act)
{
    for (std::uint32_t f = 0; f < mesh.facets.size(); ++f) {
        const Facet& facet = mesh.facets[f];
        if (has_equal_corners(facet))
            continue;
        for (std::size_t i = 0; i < 3; ++i) {
            const std::uint32_t a = facet[i];
            const std::uint32_t b = facet[(i + 1) % 3];
            act(EdgeUse{std::min(a, b), std::max(a, b), f, a < b});
        }
    }
}

/// Where each point's uses begin, and behind the last where they end.
std::vector<std::size_t> beginnings(const TriangleMesh& mesh)
{
    std::vector<std::size_t> begin(mesh.points.size() + 1);
    for_each_use(mesh, [&](const EdgeUse& use) { ++begin[use.from + 1]; });
    for (std::size_t p = 0; p < mesh.points.size(); ++p)
        begin[p + 1] += begin[p];
    return begin;
}

} // namespace

// By counting at first: only a few uses have the same `from`.
std::vector<EdgeUse> edge_uses(const TriangleMesh& mesh)
{
    const std::vector<std::size_t> begin = beginnings(mesh);
    std::vector<EdgeUse> uses(begin.back());
    std::vector<std::size_t> next = begin;
    for_each_use(mesh, [&](const EdgeUse& use) { uses[next[use.from]++] = use; });
    for (std::size_t p = 0; p < mesh.points.size(); ++p)
        std::sort(uses.begin() + static_cast<std::ptrdiff_t>(begin[p]),
                  uses.begin() + static_cast<std::ptrdiff_t>(begin[p + 1]),
                  [](const EdgeUse& a, const EdgeUse& b) {
                      return std::tie(a.to, a.facet) < std::tie(b.to, b.facet);
                  });
    return uses;
}

} // namespace glim
