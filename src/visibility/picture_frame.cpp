#include "visibility/picture_frame.h"

#include <Eigen/Geometry>

namespace glim {

Point2 PictureFrame::place_of(const Point& p) const
{
    const Vector from_centre = p - centre;
    return {width / 2.0 + across.dot(from_centre) / in_mm(pixel),
            height / 2.0 - up.dot(from_centre) / in_mm(pixel)};
}

Length PictureFrame::depth_of(const Point& p) const
{
    return millimetres(toward.dot(Vector(p - centre)));
}

PictureFrame picture_frame(const Direction& toward, const Direction& up, const Direction& forward)
{
    constexpr double along_up = 1e-6; // a sine; beyond it `across` is well known
    const Vector level = up.vector().cross(toward.vector());
    const bool looks_along_up = level.norm() < along_up;
    const Vector across =
        (looks_along_up ? Vector(forward.vector().cross(toward.vector())) : level).normalized();
    return {.toward = toward,
            .across = across,
            .up = toward.vector().cross(across),
            .centre = Point::Zero(),
            .pixel = millimetres(1),
            .width = 1,
            .height = 1};
}

} // namespace glim
