#include "geometry/triangle_mesh.h"

#include <Eigen/Geometry>

#include <limits>

namespace glim {

Vector area_vector(const TriangleMesh& mesh, std::size_t facet)
{
    const Point& a = mesh.corner(facet, 0);
    return (mesh.corner(facet, 1) - a).cross(mesh.corner(facet, 2) - a) / 2;
}

Area area_of(const TriangleMesh& mesh)
{
    double sum = 0;
    for (std::size_t f = 0; f < mesh.facets.size(); ++f)
        sum += area_vector(mesh, f).norm();
    return square_millimetres(sum);
}

TriangleMesh part_of(const TriangleMesh& mesh, std::span<const std::uint32_t> facets)
{
    constexpr std::uint32_t unused = std::numeric_limits<std::uint32_t>::max();
    std::vector<std::uint32_t> place_of(mesh.points.size(), unused);
    for (const std::uint32_t f : facets)
        for (const std::uint32_t p : mesh.facets[f])
            place_of[p] = 0;

    TriangleMesh part;
    for (std::size_t p = 0; p < mesh.points.size(); ++p) {
        if (place_of[p] == unused)
            continue;
        place_of[p] = static_cast<std::uint32_t>(part.points.size());
        part.points.push_back(mesh.points[p]);
    }
    part.facets.reserve(facets.size());
    for (const std::uint32_t f : facets) {
        const Facet& old = mesh.facets[f];
        part.facets.push_back({place_of[old[0]], place_of[old[1]], place_of[old[2]]});
    }
    return part;
}

TriangleMesh turned_over(TriangleMesh mesh)
{
    for (Facet& f : mesh.facets)
        std::swap(f[1], f[2]);
    return mesh;
}

void Box::add(const Point& p)
{
    least = least.cwiseMin(p);
    most = most.cwiseMax(p);
}

bool Box::holds(const Point& p) const
{
    return (p.array() >= least.array()).all() && (p.array() <= most.array()).all();
}

Box box_of(const TriangleMesh& mesh)
{
    Box box;
    for (const Point& p : mesh.points)
        box.add(p);
    return box;
}

} // namespace glim
