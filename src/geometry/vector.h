#pragma once

#include <Eigen/Core>

namespace glim {

/// A displacement, in millimetres where it is one, otherwise without unit.
using Vector = Eigen::Vector3d;
/// A place, coordinates in millimetres in the frame that the name or comment says.
using Point = Eigen::Vector3d;
/// A place in a plane, in millimetres.
using Point2 = Eigen::Vector2d;

/// Of two displacements in a plane: positive where `b` turns left from `a`, as large as the area of
/// the parallelogram that they span.
inline double cross(const Point2& a, const Point2& b) { return a.x() * b.y() - a.y() * b.x(); }

} // namespace glim
