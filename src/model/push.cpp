#include "model/push.h"

#include <cmath>

namespace glim {

std::optional<Direction> push_of(const Surface& surface)
{
    if (surface.reshape->push)
        return surface.reshape->push;
    Vector sum = Vector::Zero();
    for (std::size_t f = 0; f < surface.mesh.facets.size(); ++f)
        sum += area_vector(surface.mesh, f);
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
