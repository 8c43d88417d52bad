#include "visibility/contour_window.h"

#include "visibility/ray_grain.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// Whether a ray from the lamp's ball along some direction of the cone may meet the other ball:
/// the angle to its centre is at most the cone's and that under which both radii together appear.
bool may_hide(const Ball& ball, const Ball& lamp, const DirectionCone& cone)
{
    const Vector between = ball.centre - lamp.centre;
    const double reach = lamp.radius + ball.radius;
    const double free = between.squaredNorm() - reach * reach;
    if (free <= 0)
        return true;
    // The angle is compared by cosines: cos(cone + seen) = cos cone cos seen - sin cone sin seen,
    // all times the distance; both angles are below 90 degrees, so that it falls throughout.
    return cone.axis.dot(between) >= cone.cosine * std::sqrt(free) - cone.sine * reach;
}

/// Whether the facets beside the edge lie on opposite sides of it from everywhere in the cone.
bool never_outline(const ContourEdge& edge, const DirectionCone& cone)
{
    const double needed = cone.sine + ContourEdge::edge_on_sine;
    const double a = cone.axis.dot(edge.first);
    const double b = cone.axis.dot(edge.second);
    return (a > needed && b < -needed) || (a < -needed && b > needed);
}

Ball ball_about(const ContourEdge& edge)
{
    return {(edge.from + edge.to) / 2, (edge.to - edge.from).norm() / 2 + edge.grain};
}

/// About the three corners' mean: not the smallest ball, but a quick one.
Ball ball_about(const Facet& facet, const std::vector<Point>& points)
{
    const Point& a = points[facet[0]];
    const Point& b = points[facet[1]];
    const Point& c = points[facet[2]];
    const Point mean = (a + b + c) / 3;
    const double squared =
        std::max({(a - mean).squaredNorm(), (b - mean).squaredNorm(), (c - mean).squaredNorm()});
    return {mean, std::sqrt(squared)};
}

} // namespace

ContourWindow::ContourWindow(const Ball& lamp, std::span<const Direction> directions)
    : lamp_(lamp), tiles_(directions)
{
}

bool ContourWindow::is_before_lamp(const Ball& ball) const
{
    return std::any_of(tiles_.cones().begin(), tiles_.cones().end(),
                       [&](const DirectionCone& cone) { return may_hide(ball, lamp_, cone); });
}

void ContourWindow::add(const SceneMesh& mesh)
{
    std::vector<std::uint32_t> before;
    for (std::uint32_t f = 0; f < mesh.mesh->facets.size(); ++f)
        if (is_before_lamp(ball_about(mesh.mesh->facets[f], mesh.points)))
            before.push_back(f);
    for (ContourEdge& edge : edges_of(*mesh.mesh, mesh.points, before)) {
        const double furthest = std::max(edge.from.norm(), edge.to.norm());
        edge.grain = static_cast<float>(in_mm(ray_grain(millimetres(furthest), mesh.shift)));
        edge.approved = mesh.approved;
        edges_.push_back(edge);
    }
}

void ContourWindow::sort_into_tiles(const Workers& workers)
{
    edges_of_tile_.resize(tiles_.cones().size());
    const Workers silent{.threads = workers.threads, .stop = {}, .progress = {}};
    for_each_index(edges_of_tile_.size(), silent, [&](std::size_t tile, unsigned) {
        const DirectionCone& cone = tiles_.cones()[tile];
        for (std::uint32_t e = 0; e < edges_.size(); ++e)
            if (!never_outline(edges_[e], cone) && may_hide(ball_about(edges_[e]), lamp_, cone))
                edges_of_tile_[tile].push_back(e);
    });
}

} // namespace glim
