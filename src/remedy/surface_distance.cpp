#include "remedy/surface_distance.h"

#include "geometry/components.h"
#include "geometry/edge_uses.h"

#include <algorithm>
#include <cmath>
#include <queue>

namespace glim {

namespace {

using Step = std::pair<double, std::uint32_t>; ///< mm to a point, and its place

/// From each point to those that a straight line on the surface reaches: along edges, and across an
/// edge to the far corner of the facet behind it, both laid flat.
class Paths {
public:
    explicit Paths(const TriangleMesh& mesh) : mesh_(mesh), from_(mesh.points.size())
    {
        const std::vector<EdgeUse> uses = edge_uses(mesh);
        for (std::size_t i = 0; i < uses.size(); ++i) {
            const EdgeUse& use = uses[i];
            if (i == 0 || !use.same_edge(uses[i - 1]))
                join(use.from, use.to, (mesh.points[use.from] - mesh.points[use.to]).norm());
            if (i + 1 < uses.size() && use.same_edge(uses[i + 1]))
                join_across(use, uses[i + 1]);
        }
    }

    const std::vector<Step>& from(std::uint32_t point) const { return from_[point]; }

private:
    void join(std::uint32_t a, std::uint32_t b, double mm)
    {
        from_[a].emplace_back(mm, b);
        from_[b].emplace_back(mm, a);
    }

    std::uint32_t far_corner(const EdgeUse& use) const
    {
        for (const std::uint32_t corner : mesh_.facets[use.facet])
            if (corner != use.from && corner != use.to)
                return corner;
        return use.from;
    }

    /// The straight line holds only where it runs through the edge itself.
    void join_across(const EdgeUse& use, const EdgeUse& other)
    {
        const std::uint32_t p = far_corner(use), q = far_corner(other);
        const Point& a = mesh_.points[use.from];
        const Vector edge = mesh_.points[use.to] - a;
        const double length = edge.norm();
        if (length == 0 || p == q)
            return;
        const auto flat = [&](const Point& at) {
            const double along = (at - a).dot(edge) / length;
            const Vector off = at - a - along / length * edge;
            return Point2(along, off.norm());
        };
        const Point2 u = flat(mesh_.points[p]), v = flat(mesh_.points[q]);
        const double height = u.y() + v.y();
        const double crossing = height > 0 ? (u.x() * v.y() + v.x() * u.y()) / height : -1;
        if (crossing > 0 && crossing < length)
            join(p, q, std::hypot(u.x() - v.x(), height));
    }

    const TriangleMesh& mesh_;
    std::vector<std::vector<Step>> from_;
};

/// Of each connected piece the point nearest to `start`, with its distance.
std::vector<Step> entries(const TriangleMesh& mesh, const Point& start)
{
    const std::vector<std::uint32_t> pieces = components_of(mesh);
    std::vector<Step> nearest;
    for (std::size_t f = 0; f < mesh.facets.size(); ++f) {
        if (pieces[f] >= nearest.size())
            nearest.resize(pieces[f] + 1, {std::numeric_limits<double>::infinity(), 0});
        for (const std::uint32_t corner : mesh.facets[f])
            nearest[pieces[f]] =
                std::min(nearest[pieces[f]], Step((mesh.points[corner] - start).norm(), corner));
    }
    return nearest;
}

std::vector<double> to_points(const TriangleMesh& mesh, const Point& start)
{
    const Paths paths(mesh);
    std::vector<double> mm(mesh.points.size(), std::numeric_limits<double>::infinity());
    std::priority_queue<Step, std::vector<Step>, std::greater<>> open;
    for (const Step& entry : entries(mesh, start)) {
        mm[entry.second] = std::min(mm[entry.second], entry.first);
        open.push(entry);
    }
    while (!open.empty()) {
        const auto [here, point] = open.top();
        open.pop();
        if (here > mm[point])
            continue;
        for (const auto& [step, next] : paths.from(point))
            if (here + step < mm[next]) {
                mm[next] = here + step;
                open.emplace(mm[next], next);
            }
    }
    return mm;
}

} // namespace

std::vector<std::vector<Length>> distances_along(std::span<const TriangleMesh* const> meshes,
                                                 const Point& start)
{
    std::vector<std::vector<Length>> distances;
    for (const TriangleMesh* mesh : meshes) {
        const std::vector<double> points = to_points(*mesh, start);
        std::vector<Length> of_facets;
        for (const Facet& f : mesh->facets) {
            const Point centre = (mesh->points[f[0]] + mesh->points[f[1]] + mesh->points[f[2]]) / 3;
            double least = std::numeric_limits<double>::infinity();
            for (const std::uint32_t corner : f)
                least = std::min(least, points[corner] + (mesh->points[corner] - centre).norm());
            of_facets.push_back(millimetres(least));
        }
        distances.push_back(std::move(of_facets));
    }
    return distances;
}

} // namespace glim
