#include "geometry/placement.h"

#include "units/trig.h"

namespace glim {

Placement Placement::shift(const Vector& by)
{
    return Placement(Eigen::Affine3d(Eigen::Translation3d(by)));
}

Placement Placement::mirror(const Point& on, const Direction& normal)
{
    const Vector& n = normal.vector();
    Eigen::Affine3d move = Eigen::Affine3d::Identity();
    move.linear() -= 2 * n * n.transpose();
    move.translation() = 2 * n.dot(on) * n;
    return Placement(move);
}

Placement Placement::axes(const Eigen::Matrix3d& to, const Eigen::Matrix3d& from)
{
    Eigen::Affine3d move = Eigen::Affine3d::Identity();
    move.linear() = to * from.transpose();
    return Placement(move);
}

Placement Placement::turn(const Point& centre, const Direction& axis, Angle by)
{
    const Eigen::Matrix3d turning =
        Eigen::AngleAxisd(in_radians(by), axis.vector()).toRotationMatrix();
    return Placement(Eigen::Translation3d(centre) * Eigen::Affine3d(turning) *
                     Eigen::Translation3d(-centre));
}

Direction Placement::operator()(const Direction& d) const
{
    return Direction::along(move_.linear() * d.vector());
}

Placement Placement::operator*(const Placement& first) const
{
    return Placement(move_ * first.move_);
}

Placement Placement::inverse() const { return Placement(move_.inverse(Eigen::Isometry)); }

TriangleMesh placed(const TriangleMesh& mesh, const Placement& placement)
{
    TriangleMesh moved = mesh;
    for (Point& p : moved.points)
        p = placement(p);
    if (placement.mirrors())
        for (Facet& f : moved.facets)
            std::swap(f[1], f[2]);
    return moved;
}

} // namespace glim
