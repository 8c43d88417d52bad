#include "geometry/normal_offset.h"

#include <Eigen/Geometry>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace glim {

namespace {

/// Points that are equal to the last bit have one number.
std::vector<std::size_t> numbers_of_places(const TriangleMesh& mesh)
{
    std::map<std::array<double, 3>, std::size_t> places;
    std::vector<std::size_t> numbers;
    numbers.reserve(mesh.points.size());
    for (const Point& p : mesh.points)
        numbers.push_back(places.try_emplace({p.x(), p.y(), p.z()}, places.size()).first->second);
    return numbers;
}

/// What a facet has to say about one of its corners.
struct CornerNormal {
    std::size_t place = 0;
    Vector normal = Vector::Zero(); ///< unit
    double angle = 0;               ///< radians
};

std::vector<CornerNormal> corner_normals(const TriangleMesh& mesh,
                                         const std::vector<std::size_t>& places)
{
    std::vector<CornerNormal> corners;
    for (std::size_t f = 0; f < mesh.facets.size(); ++f) {
        const Vector area = area_vector(mesh, f);
        if (area.isZero())
            continue;
        for (int i = 0; i < 3; ++i) {
            const Vector a = mesh.corner(f, (i + 1) % 3) - mesh.corner(f, i);
            const Vector b = mesh.corner(f, (i + 2) % 3) - mesh.corner(f, i);
            corners.push_back({places[mesh.facets[f][i]], area.normalized(),
                               std::atan2(a.cross(b).norm(), a.dot(b))});
        }
    }
    return corners;
}

} // namespace

std::vector<Vector> normal_offsets(const TriangleMesh& mesh)
{
    const std::vector<std::size_t> places = numbers_of_places(mesh);
    const std::vector<CornerNormal> corners = corner_normals(mesh, places);
    std::vector<Vector> mean(mesh.points.size(), Vector::Zero());
    for (const CornerNormal& corner : corners)
        mean[corner.place] += corner.angle * corner.normal;
    for (Vector& m : mean)
        m = m.isZero() ? m : m.normalized();
    std::vector<double> along(mean.size()), angles(mean.size());
    for (const CornerNormal& corner : corners) {
        along[corner.place] += corner.angle * mean[corner.place].dot(corner.normal);
        angles[corner.place] += corner.angle;
    }
    std::vector<Vector> offsets;
    offsets.reserve(mesh.points.size());
    for (const std::size_t place : places) {
        const bool known = along[place] > 0;
        const double stretch =
            known ? std::min(most_offset_stretch, angles[place] / along[place]) : 0;
        offsets.emplace_back(stretch * mean[place]);
    }
    return offsets;
}

TriangleMesh offset_by(const TriangleMesh& mesh, const std::vector<Vector>& offsets, Length by)
{
    TriangleMesh moved = mesh;
    for (std::size_t i = 0; i < moved.points.size(); ++i)
        moved.points[i] += in_mm(by) * offsets[i];
    return moved;
}

} // namespace glim
