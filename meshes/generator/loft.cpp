#include "generator/loft.h"

#include <Eigen/Geometry>

namespace glim::demo {
namespace {

Vector twice_area(const TriangleMesh& mesh)
{
    Vector sum = Vector::Zero();
    for (const Facet& f : mesh.facets) {
        const Point& a = mesh.points[f[0]];
        sum += Vector(mesh.points[f[1]] - a).cross(Vector(mesh.points[f[2]] - a));
    }
    return sum;
}

} // namespace

void add_quad(TriangleMesh& mesh, const std::array<std::uint32_t, 4>& corners)
{
    const auto [a, b, c, d] = corners;
    const auto add = [&](std::uint32_t i, std::uint32_t j, std::uint32_t k) {
        if (i != j && j != k && k != i)
            mesh.facets.push_back({i, j, k});
    };
    const double first = (mesh.points[a] - mesh.points[c]).norm();
    const double second = (mesh.points[b] - mesh.points[d]).norm();
    if (first <= second) {
        add(a, b, c);
        add(a, c, d);
    } else {
        add(a, b, d);
        add(b, c, d);
    }
}

TriangleMesh skinned(const Loft& loft)
{
    TriangleMesh mesh;
    const auto height = static_cast<std::uint32_t>(loft.front().size());
    for (const std::vector<Point>& section : loft)
        mesh.points.insert(mesh.points.end(), section.begin(), section.end());
    for (std::uint32_t i = 0; i + 1 < loft.size(); ++i)
        for (std::uint32_t j = 0; j + 1 < height; ++j) {
            const std::uint32_t a = i * height + j;
            const std::uint32_t b = a + height;
            add_quad(mesh, {a, b, b + 1, a + 1});
        }
    return mesh;
}

void append(TriangleMesh& mesh, const TriangleMesh& more)
{
    const auto shift = static_cast<std::uint32_t>(mesh.points.size());
    mesh.points.insert(mesh.points.end(), more.points.begin(), more.points.end());
    for (const Facet& f : more.facets)
        mesh.facets.push_back({f[0] + shift, f[1] + shift, f[2] + shift});
}

TriangleMesh turned_inside_out(TriangleMesh mesh)
{
    for (Facet& f : mesh.facets)
        std::swap(f[1], f[2]);
    return mesh;
}

TriangleMesh facing(TriangleMesh mesh, const Vector& side)
{
    return twice_area(mesh).dot(side) < 0 ? turned_inside_out(std::move(mesh)) : mesh;
}

} // namespace glim::demo
