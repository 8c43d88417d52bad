#include "geometry/chord_error.h"

#include "geometry/edge_uses.h"
#include "units/trig.h"

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace glim {

namespace {

/// How far a smooth surface arches over the edge of these two facets; 0 where it does not.
double arch(const TriangleMesh& mesh, const std::vector<Vector>& areas, const EdgeUse& one,
            const EdgeUse& other)
{
    const Vector& first = areas[one.facet];
    const Vector& second = areas[other.facet];
    if (first.isZero(0) || second.isZero(0))
        return 0;
    // Two facets that run through their edge the same way face opposite ways.
    const double sense = one.forward == other.forward ? -1 : 1;
    const Angle bend = angle_of(first.cross(second).norm(), sense * first.dot(second));
    if (bend > crease)
        return 0;
    const double length = (mesh.points[one.to] - mesh.points[one.from]).norm();
    const double mean_height = (first.norm() + second.norm()) / length;
    return in_radians(bend) * mean_height / 8;
}

std::vector<Vector> area_vectors(const TriangleMesh& mesh)
{
    std::vector<Vector> areas;
    areas.reserve(mesh.facets.size());
    for (std::size_t f = 0; f < mesh.facets.size(); ++f)
        areas.push_back(area_vector(mesh, f));
    return areas;
}

std::vector<double> arch_of_each_facet(const TriangleMesh& mesh, const std::vector<Vector>& areas)
{
    std::vector<double> sums(mesh.facets.size());
    const std::vector<EdgeUse> uses = edge_uses(mesh);
    for (std::size_t first = 0, last = 0; first < uses.size(); first = last) {
        while (last < uses.size() && uses[last].same_edge(uses[first]))
            ++last;
        if (last - first != 2)
            continue;
        const double height = arch(mesh, areas, uses[first], uses[first + 1]);
        sums[uses[first].facet] += height;
        sums[uses[first + 1].facet] += height;
    }
    return sums;
}

/// A facet's figure and its area.
struct Weighed {
    double height, area;
    friend bool operator<(const Weighed& a, const Weighed& b) { return a.height < b.height; }
};

/// The least height that is not exceeded on so much area. Halves again and again, which takes less
/// than to bring all in order. Requires: not empty; `wanted` is at most the sum of all areas.
double height_over(std::vector<Weighed> facets, double wanted)
{
    auto from = facets.begin();
    auto to = facets.end();
    while (to - from > 1) {
        const auto middle = from + (to - from) / 2;
        std::nth_element(from, middle, to);
        const double below = std::accumulate(
            from, middle, 0.0, [](double sum, const Weighed& w) { return sum + w.area; });
        if (below >= wanted) {
            to = middle;
        } else {
            wanted -= below;
            from = middle;
        }
    }
    return from->height;
}

} // namespace

Length chord_error(const TriangleMesh& mesh)
{
    const std::vector<Vector> areas = area_vectors(mesh);
    const std::vector<double> arches = arch_of_each_facet(mesh, areas);
    std::vector<Weighed> facets;
    facets.reserve(arches.size());
    double whole = 0;
    for (std::size_t f = 0; f < arches.size(); ++f) {
        facets.push_back({arches[f], areas[f].norm()});
        whole += facets.back().area;
    }
    return millimetres(whole > 0 ? height_over(std::move(facets), share_within_chord_error * whole)
                                 : 0);
}

} // namespace glim
