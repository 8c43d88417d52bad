#include "geometry/chord_error.h"

#include "units/trig.h"

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>
#include <tuple>

namespace glim {

namespace {

/// One facet's side of an edge.
struct EdgeUse {
    std::uint32_t from, to; ///< from < to
    std::uint32_t facet;
    bool forward; ///< the facet runs from `from` to `to`

    bool same_edge(const EdgeUse& other) const { return from == other.from && to == other.to; }
};

std::vector<EdgeUse> edge_uses(const TriangleMesh& mesh)
{
    std::vector<EdgeUse> uses;
    uses.reserve(3 * mesh.facets.size());
    for (std::uint32_t f = 0; f < mesh.facets.size(); ++f)
        for (int i = 0; i < 3; ++i) {
            const std::uint32_t a = mesh.facets[f][i];
            const std::uint32_t b = mesh.facets[f][(i + 1) % 3];
            if (a != b)
                uses.push_back({std::min(a, b), std::max(a, b), f, a < b});
        }
    std::sort(uses.begin(), uses.end(), [](const EdgeUse& a, const EdgeUse& b) {
        return std::tie(a.from, a.to, a.facet) < std::tie(b.from, b.to, b.facet);
    });
    return uses;
}

/// How far a smooth surface arches over the edge of these two facets; 0 where it does not.
double arch(const TriangleMesh& mesh, const EdgeUse& one, const EdgeUse& other)
{
    const Vector first = area_vector(mesh, one.facet);
    const Vector second = area_vector(mesh, other.facet);
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

std::vector<double> arch_of_each_facet(const TriangleMesh& mesh)
{
    std::vector<double> sums(mesh.facets.size());
    const std::vector<EdgeUse> uses = edge_uses(mesh);
    for (std::size_t first = 0, last = 0; first < uses.size(); first = last) {
        while (last < uses.size() && uses[last].same_edge(uses[first]))
            ++last;
        if (last - first != 2)
            continue;
        const double height = arch(mesh, uses[first], uses[first + 1]);
        sums[uses[first].facet] += height;
        sums[uses[first + 1].facet] += height;
    }
    return sums;
}

} // namespace

Length chord_error(const TriangleMesh& mesh)
{
    const std::vector<double> arches = arch_of_each_facet(mesh);
    std::vector<std::pair<double, double>> by_height; // arch, area
    double whole = 0;
    for (std::size_t f = 0; f < arches.size(); ++f) {
        by_height.emplace_back(arches[f], area_vector(mesh, f).norm());
        whole += by_height.back().second;
    }
    std::sort(by_height.begin(), by_height.end());
    double passed = 0;
    for (const auto& [height, area] : by_height) {
        passed += area;
        if (passed >= share_within_chord_error * whole)
            return millimetres(height);
    }
    return {};
}

} // namespace glim
