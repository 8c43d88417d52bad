#include "judgement/place.h"

#include <cassert>

namespace glim {

namespace {

/// The two points at which a measure is least and most; of equal ones the first.
struct Ends {
    Point least, most;
    Length at_least = millimetres(std::numeric_limits<double>::infinity());
    Length at_most = -at_least;
};

template <class Measure>
Ends ends_of(const TriangleMesh& mesh, Measure&& measure)
{
    Ends ends;
    for (const Point& p : mesh.points) {
        const Length at = measure(p);
        if (at < ends.at_least) {
            ends.at_least = at;
            ends.least = p;
        }
        if (at > ends.at_most) {
            ends.at_most = at;
            ends.most = p;
        }
    }
    return ends;
}

void add_heights(LampPlace& place, const TriangleMesh& apparent, const Ground& ground)
{
    const Ends ends = ends_of(apparent, [&](const Point& p) { return ground.height_of(p); });
    place.lowest = ends.least;
    place.highest = ends.most;
    place.least_height = ends.at_least;
    place.most_height = ends.at_most;
}

/// Needs the centroid.
void add_laterals(LampPlace& place, const TriangleMesh& apparent, const Vehicle& vehicle)
{
    place.side = vehicle.lateral(place.centroid) < -on_median_plane ? Side::right : Side::left;
    const double outward = place.side == Side::right ? -1 : 1;
    const Ends ends =
        ends_of(apparent, [&](const Point& p) { return outward * vehicle.lateral(p); });
    place.innermost = ends.least;
    place.outermost = ends.most;
    place.from_median_innermost = ends.at_least;
    place.from_median_outermost = ends.at_most;
}

} // namespace

std::optional<LampPlace> place_of(const TriangleMesh& lit, const Direction& axis,
                                  const Vehicle& vehicle, const Ground& ground)
{
    const TriangleMesh apparent = apparent_surface(lit, axis);
    if (apparent.facets.empty())
        return std::nullopt;
    const SeenAlong seen = seen_along(apparent, axis);
    LampPlace place;
    place.centroid = seen.centroid;
    place.on_axis = seen.area;
    add_heights(place, apparent, ground);
    add_laterals(place, apparent, vehicle);
    return place;
}

Length between_inner_edges(const LampPlace& left, const LampPlace& right)
{
    assert(left.side != right.side);
    return left.from_median_innermost + right.from_median_innermost;
}

} // namespace glim
