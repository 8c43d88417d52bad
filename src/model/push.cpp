#include "model/push.h"

#include <algorithm>

namespace glim {

bool meets_its_twin(const Surface& surface, const Vehicle& vehicle)
{
    const auto on_median = [&](const Point& p) {
        const Length off = vehicle.lateral(p);
        return -end_on_median <= off && off <= end_on_median;
    };
    return surface.mirror == MirrorRule::yes &&
           std::any_of(surface.mesh.points.begin(), surface.mesh.points.end(), on_median);
}

std::optional<Direction> push_of(const Surface& surface, const Vehicle& vehicle)
{
    if (surface.reshape->push)
        return surface.reshape->push;
    Vector sum = Vector::Zero();
    for (std::size_t f = 0; f < surface.mesh.facets.size(); ++f)
        sum += area_vector(surface.mesh, f);
    if (meets_its_twin(surface, vehicle))
        sum -= vehicle.left().dot(sum) * vehicle.left().vector();
    if (sum.norm() <= least_push_share * in_mm2(area_of(surface.mesh)))
        return std::nullopt;
    return Direction::along(-sum);
}

double share_across(const TriangleMesh& mesh, const Direction& push)
{
    double across = 0;
    double all = 0;
    for (std::size_t f = 0; f < mesh.facets.size(); ++f) {
        const Vector area = area_vector(mesh, f);
        across += std::abs(push.dot(area));
        all += area.norm();
    }
    return all > 0 ? across / all : 0;
}

} // namespace glim
