#include "judgement/apparent_surface.h"

#include <cassert>

namespace glim {

TriangleMesh apparent_surface(const TriangleMesh& lit, const Direction& axis)
{
    std::vector<std::uint32_t> facing;
    for (std::uint32_t f = 0; f < lit.facets.size(); ++f) {
        const Vector area = area_vector(lit, f);
        if (axis.dot(area) > edge_on_cosine * area.norm())
            facing.push_back(f);
    }
    return part_of(lit, facing);
}

SeenAlong seen_along(const TriangleMesh& apparent, const Direction& axis)
{
    assert(!apparent.facets.empty());
    // About a corner of its own, so that a lamp far from the origin loses no digits.
    const Point& origin = apparent.points.front();
    Vector moment = Vector::Zero();
    double sum = 0;
    for (std::size_t f = 0; f < apparent.facets.size(); ++f) {
        const double area = axis.dot(area_vector(apparent, f));
        sum += area;
        for (int i = 0; i < 3; ++i)
            moment += area / 3 * (apparent.corner(f, i) - origin);
    }
    return {origin + moment / sum, square_millimetres(sum)};
}

} // namespace glim
