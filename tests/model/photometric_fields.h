#pragma once

#include "model/intensity_grid.h"
#include "units/trig.h"

#include <cmath>
#include <functional>

namespace glim::test {

/// Candela toward a unit vector given by its parts along the axis, to the right as seen from the
/// lamp looking out, and up.
using LightField = std::function<double(double ahead, double right, double up)>;

/// A beam that is wider to one side than to the other and rolled by 20 degrees: no symmetry of any
/// goniometer fits it. Smooth, and nowhere 0.
inline double skew_field(double ahead, double right, double up)
{
    const double along = cos(degrees(20)) * right + sin(degrees(20)) * up;
    const double across = cos(degrees(20)) * up - sin(degrees(20)) * right;
    return 200 * std::exp(1.5 * (ahead - 1) + 0.8 * along - 0.5 * across + 0.4 * along * across);
}

/// 100 cd ahead, none to the rear.
inline double lambertian(double ahead, double, double) { return ahead > 0 ? 100 * ahead : 0; }

inline double uniform(double, double, double) { return 100; }

/// How the file's own axes (see Goniometer) lie in a lamp.
using PartsOf = std::function<Vector(const Vector& in_file)>;

/// Types a and b: x ahead, y to the right.
inline Vector parts_of_a_and_b(const Vector& v) { return v; }
/// Type c hung facing down: gamma 0 ahead, C 0 to the right, C 90 up.
inline Vector parts_of_nadir(const Vector& v) { return {-v.z(), v.x(), v.y()}; }
/// Type c upright: C 0 ahead, and C 90 to the left.
inline Vector parts_of_upright(const Vector& v) { return {v.x(), -v.y(), v.z()}; }

inline std::vector<Angle> angles(double from, double to, double step)
{
    std::vector<Angle> all;
    const long count = std::lround((to - from) / step);
    for (long i = 0; i <= count; ++i)
        all.push_back(degrees(from + step * double(i)));
    return all;
}

/// The field at every point of a grid.
inline IntensityGrid sampled(Goniometer goniometer, std::vector<Angle> horizontal,
                             std::vector<Angle> vertical, const LightField& field,
                             const PartsOf& parts)
{
    IntensityGrid grid{goniometer, std::move(horizontal), std::move(vertical), {}};
    for (const Angle h : grid.horizontal)
        for (const Angle v : grid.vertical) {
            const Vector p = parts(file_vector(goniometer, {h, v}));
            grid.candela.push_back(candelas(field(p.x(), p.y(), p.z())));
        }
    return grid;
}

} // namespace glim::test
