#include "generator/lift.h"

#include "generator/loft.h"

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace glim::demo {
namespace {

/// Strips that turn the quarter round.
constexpr int round_strips = 3;

/// The hem's section at one point of the border, from the surface inward.
std::vector<Point> section(const Lifted& edge, const Vector& away, const Hem& hem)
{
    std::vector<Point> points{edge.at};
    for (int k = 1; hem.radius > 0 && k <= round_strips; ++k) {
        const double a = std::numbers::pi / 2 * k / round_strips;
        points.push_back(edge.at + hem.radius * std::sin(a) * away -
                         hem.radius * (1 - std::cos(a)) * edge.outward);
    }
    points.push_back(points.back() - hem.depth * edge.outward);
    return points;
}

/// The places before and after `k` in the chain; `k` itself where an open chain ends.
std::pair<std::size_t, std::size_t> neighbours(const ChartMesh::Chain& chain, std::size_t k)
{
    const std::size_t n = chain.points.size();
    if (chain.closed)
        return {(k + n - 1) % n, (k + 1) % n};
    return {k == 0 ? 0 : k - 1, std::min(k + 1, n - 1)};
}

/// Unit, along the surface and out over its border.
Vector away_from_surface(const std::vector<Lifted>& edge, std::size_t from, std::size_t k,
                         std::size_t to)
{
    const Vector along = (edge[to].at - edge[from].at).normalized();
    Vector away = edge[k].outward.cross(along);
    // What begins on the median plane stays on it.
    if (edge[k].at.y() == 0)
        away.y() = 0;
    return away.normalized();
}

} // namespace

Lift sunk(Lift lift, double depth)
{
    return [lift = std::move(lift), depth](const Point2& p) {
        Lifted l = lift(p);
        l.at -= depth * l.outward;
        return l;
    };
}

TriangleMesh lifted(const ChartMesh& chart, const Lift& lift)
{
    TriangleMesh mesh;
    for (const Point2& p : chart.points())
        mesh.points.push_back(lift(p).at);
    for (const auto& [a, b, c, d] : chart.quads())
        add_quad(mesh, {d, c, b, a});
    return mesh;
}

TriangleMesh hemmed(const ChartMesh& chart, const Lift& lift,
                    const std::function<std::optional<Hem>(const Point2& middle)>& hem)
{
    TriangleMesh mesh;
    for (const ChartMesh::Chain& chain : chart.border([&](const Point2& p) { return !hem(p); })) {
        std::vector<Point2> line;
        std::vector<Lifted> edge;
        for (std::uint32_t p : chain.points) {
            line.push_back(chart.points()[p]);
            edge.push_back(lift(line.back()));
        }
        Loft loft;
        for (std::size_t k = 0; k < edge.size(); ++k) {
            const auto [from, to] = neighbours(chain, k);
            const Hem before = *hem((line[from] + line[from == k ? k + 1 : k]) / 2);
            const Hem after = *hem((line[to == k ? k - 1 : k] + line[to]) / 2);
            const Hem shape{(before.radius + after.radius) / 2, (before.depth + after.depth) / 2};
            loft.push_back(section(edge[k], away_from_surface(edge, from, k, to), shape));
        }
        if (chain.closed)
            loft.push_back(loft.front());
        append(mesh, skinned(loft));
    }
    return mesh;
}

} // namespace glim::demo
