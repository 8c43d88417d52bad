#include "remedy/least_sight.h"

#include "geometry/direction_grid.h"

#include <algorithm>
#include <limits>

namespace glim {

namespace {

/// As finely as the rest of a field is looked at here; the least is in a corner of nearly all.
constexpr Angle coarse_step = degrees(5);
/// Sums over facets are rounded by less.
constexpr double rounding_share = 1e-9;

} // namespace

LeastSight least_sight(const TriangleMesh& lit, const Field& field)
{
    std::vector<Vector> areas;
    areas.reserve(lit.facets.size());
    for (std::size_t f = 0; f < lit.facets.size(); ++f)
        areas.push_back(area_vector(lit, f));
    double least = std::numeric_limits<double>::infinity();
    LeastSight sight;
    for (const Bearing& b : grid_of(field, coarse_step).nodes) {
        const Vector toward = direction_of(b, LampFrame{}).vector();
        double shown = 0;
        for (const Vector& area : areas)
            shown += std::max(0.0, area.dot(toward));
        if (shown < least) {
            least = shown;
            sight.from = b;
        }
    }
    sight.shown = square_millimetres(least);
    return sight;
}

bool is_too_small(Area shown, Area needed)
{
    return in_mm2(shown) < (1 - rounding_share) * in_mm2(needed);
}

} // namespace glim
