#include "geometry/point_normals.h"

#include <Eigen/Geometry>

#include <cmath>

namespace glim {

std::vector<Vector> point_normals(const TriangleMesh& mesh)
{
    std::vector<Vector> normals(mesh.points.size(), Vector::Zero());
    for (std::size_t f = 0; f < mesh.facets.size(); ++f) {
        const Vector area = area_vector(mesh, f);
        if (area.isZero(0))
            continue;
        const Vector normal = area.normalized();
        for (int i = 0; i < 3; ++i) {
            const Vector a = mesh.corner(f, (i + 1) % 3) - mesh.corner(f, i);
            const Vector b = mesh.corner(f, (i + 2) % 3) - mesh.corner(f, i);
            normals[mesh.facets[f][i]] += std::atan2(a.cross(b).norm(), a.dot(b)) * normal;
        }
    }
    for (Vector& n : normals)
        if (n.norm() > 0)
            n.normalize();
    return normals;
}

} // namespace glim
