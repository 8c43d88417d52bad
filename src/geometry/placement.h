#pragma once

#include "geometry/direction.h"
#include "geometry/triangle_mesh.h"

#include <Eigen/Geometry>

namespace glim {

/// A rigid move, or a rigid move and a mirror: shapes and sizes stay, lengths are kept.
/// A value is named `to_from`, so that a chain reads like dominoes.
class Placement {
public:
    Placement() : move_(Eigen::Affine3d::Identity()) {}
    static Placement shift(const Vector& by);
    /// Mirror in the plane through `on` perpendicular to `normal`.
    static Placement mirror(const Point& on, const Direction& normal);
    /// The turn that takes the axes `from` (columns, orthonormal) onto `to`.
    static Placement axes(const Eigen::Matrix3d& to, const Eigen::Matrix3d& from);
    /// A turn about the line through `centre` along `axis`, counter-clockwise seen against it.
    static Placement turn(const Point& centre, const Direction& axis, Angle by);

    Point operator()(const Point& p) const { return move_ * p; }
    Direction operator()(const Direction& d) const;
    Placement operator*(const Placement& first) const;
    Placement inverse() const;

    bool mirrors() const { return move_.linear().determinant() < 0; }
    bool is_identity() const { return move_.matrix() == Eigen::Matrix4d::Identity(); }
    const Eigen::Affine3d& matrix() const { return move_; }

private:
    explicit Placement(const Eigen::Affine3d& move) : move_(move) {}
    Eigen::Affine3d move_;
};

/// The mesh moved; where the placement mirrors, the winding is reversed too, so that outside stays
/// outside.
TriangleMesh placed(const TriangleMesh& mesh, const Placement& placement);

} // namespace glim
