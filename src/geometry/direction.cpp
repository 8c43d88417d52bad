#include "geometry/direction.h"

#include <Eigen/Geometry>

#include <cassert>

namespace glim {

namespace {

/// The axis least along `v`: the safest partner for a cross product.
Vector least_aligned_axis(const Vector& v)
{
    Eigen::Index i = 0;
    v.cwiseAbs().minCoeff(&i);
    return Vector::Unit(i);
}

} // namespace

Direction Direction::along(const Vector& v)
{
    const double length = v.norm();
    assert(std::isfinite(length) && length > 0);
    // A vector that is unit already stays itself, bit for bit.
    return Direction(length == 1 ? v : Vector(v / length));
}

ViewPlane::ViewPlane(const Direction& d)
    : toward(d), across(least_aligned_axis(d.vector()).cross(d.vector()).normalized()),
      up(d.vector().cross(across))
{
}

} // namespace glim
