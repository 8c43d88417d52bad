#include "model/goniometer.h"

#include "units/trig.h"

#include <cmath>

namespace glim {

namespace {

/// In [0, 360); a hair below 0 rounds to 360, which is 0.
Angle full_turn(Angle a)
{
    const Angle turned = a < degrees(0) ? a + degrees(360) : a;
    return turned < degrees(360) ? turned : degrees(0);
}

} // namespace

Vector file_vector(Goniometer goniometer, const FileAngles& angles)
{
    const double sin_h = sin(angles.h);
    const double cos_h = cos(angles.h);
    const double sin_v = sin(angles.v);
    const double cos_v = cos(angles.v);
    switch (goniometer) {
    case Goniometer::a:
        return {cos_v * cos_h, cos_v * sin_h, sin_v};
    case Goniometer::b:
        return {cos_h * cos_v, sin_h, cos_h * sin_v};
    case Goniometer::c:
        break;
    }
    return {sin_v * cos_h, sin_v * sin_h, -cos_v};
}

// An angle from a pole by its sine alone would lose half its digits there.
FileAngles file_angles(Goniometer goniometer, const Direction& d)
{
    const Vector& v = d.vector();
    switch (goniometer) {
    case Goniometer::a:
        return {angle_of(v.y(), v.x()), angle_of(v.z(), std::hypot(v.x(), v.y()))};
    case Goniometer::b:
        return {angle_of(v.y(), std::hypot(v.x(), v.z())), angle_of(v.z(), v.x())};
    case Goniometer::c:
        break;
    }
    return {full_turn(angle_of(v.y(), v.x())), angle_of(std::hypot(v.x(), v.y()), -v.z())};
}

} // namespace glim
