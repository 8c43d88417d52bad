#include "visibility/contour_edges.h"

#include <Eigen/Geometry>

#include <algorithm>
#include <tuple>

namespace glim {

namespace {

/// One facet's use of an edge, filed under the edge's lower end.
struct Use {
    std::uint32_t higher;   ///< the edge's other end
    std::uint32_t opposite; ///< the facet's third corner
    Vector side;

    auto order() const { return std::tie(higher, opposite); }
};

/// Zero where the facet has no area: then it lies on neither side of its edges.
Vector normal_of(const Facet& f, const std::vector<Point>& points)
{
    const Vector twice = (points[f[1]] - points[f[0]]).cross(points[f[2]] - points[f[0]]);
    const double size = twice.norm();
    return size > 0 ? Vector(twice / size) : Vector(Vector::Zero());
}

bool has_three_corners(const Facet& f) { return f[0] != f[1] && f[1] != f[2] && f[2] != f[0]; }

/// Uses sorted by lower end, each end's own from `first[end]` to `first[end + 1]`.
struct Uses {
    std::vector<std::uint32_t> first;
    std::vector<Use> uses;
};

Uses uses_of(const TriangleMesh& mesh, const std::vector<Point>& points,
             std::span<const std::uint32_t> facets)
{
    Uses all{std::vector<std::uint32_t>(points.size() + 2), {}};
    const auto for_each_edge = [&](const auto& act) {
        for (const std::uint32_t number : facets)
            if (const Facet& f = mesh.facets[number]; has_three_corners(f))
                for (int i = 0; i < 3; ++i)
                    act(f, f[i], f[(i + 1) % 3], f[(i + 2) % 3]);
    };
    for_each_edge([&](const Facet&, std::uint32_t a, std::uint32_t b, std::uint32_t) {
        ++all.first[std::min(a, b) + 2];
    });
    for (std::size_t i = 2; i < all.first.size(); ++i)
        all.first[i] += all.first[i - 1];
    all.uses.resize(all.first.back());
    for_each_edge([&](const Facet& f, std::uint32_t a, std::uint32_t b, std::uint32_t c) {
        const Vector normal = normal_of(f, points);
        all.uses[all.first[std::min(a, b) + 1]++] = {std::max(a, b), c,
                                                     a < b ? normal : Vector(-normal)};
    });
    return all;
}

/// `users` of one edge, sorted by their third corners.
ContourEdge edge_between(std::span<const Use> users, const Point& from, const Point& to)
{
    std::array<const Use*, 2> beside = {&users.front(), &users.front()};
    std::size_t different = 1;
    for (std::size_t i = 1; i < users.size(); ++i)
        if (users[i].opposite != users[i - 1].opposite) {
            beside[1] = &users[i];
            ++different;
        }
    if (different > 2)
        beside[1] = beside[0];
    return {from, to, beside[0]->side, beside[1]->side, 0, false};
}

} // namespace

std::vector<ContourEdge> edges_of(const TriangleMesh& mesh, const std::vector<Point>& points,
                                  std::span<const std::uint32_t> facets)
{
    Uses all = uses_of(mesh, points, facets);
    std::vector<ContourEdge> edges;
    edges.reserve(all.uses.size() / 2);
    for (std::uint32_t lower = 0; lower < points.size(); ++lower) {
        const std::span<Use> here =
            std::span(all.uses).subspan(all.first[lower], all.first[lower + 1] - all.first[lower]);
        std::sort(here.begin(), here.end(),
                  [](const Use& a, const Use& b) { return a.order() < b.order(); });
        for (std::size_t i = 0; i < here.size();) {
            std::size_t end = i + 1;
            while (end < here.size() && here[end].higher == here[i].higher)
                ++end;
            edges.push_back(
                edge_between(here.subspan(i, end - i), points[lower], points[here[i].higher]));
            i = end;
        }
    }
    return edges;
}

} // namespace glim
