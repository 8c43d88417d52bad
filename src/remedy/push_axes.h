#pragma once

#include "geometry/direction.h"

#include <Eigen/Geometry>

#include <cmath>

namespace glim {

/// A push that is seen end on, within some 1 degree, lowers nothing in view.
inline constexpr double least_push_seen = 0.02;

/// The view plane toward one direction, turned so that what is pushed goes straight down in it.
struct PushAxes {
    Vector toward; ///< unit, from the lamp towards the eye
    Vector across; ///< unit, in the view plane
    Vector up;     ///< unit, in the view plane, against the push
    Vector before; ///< unit, across the push, out of the lit face: what is pushed stays as far
    double share;  ///< so far a point goes down in view for each mm that it is pushed

    /// `push` is unit. Where it is seen end on, `up` is any way across the view.
    PushAxes(const Direction& d, const Vector& push) : toward(d.vector())
    {
        const Vector seen = push - toward.dot(push) * toward;
        share = seen.norm();
        up = lowers() ? Vector(-seen / share) : ViewPlane(d).up;
        across = up.cross(toward);
        before = lowers() ? Vector(share * toward + toward.dot(push) * up) : toward;
    }
    /// How far the end of a way along the line of sight lies before its beginning.
    double before_along(double way) const { return way * before.dot(toward); }
    bool lowers() const { return share > least_push_seen; }
};

/// A place as the axes have it, mm. A surface point that lies no further before than a lit point
/// never comes between it and the eye, however deep it is pushed.
struct SeenPlace {
    double u; ///< across
    double y; ///< up
    double w; ///< how far before
};
inline SeenPlace seen_place(const PushAxes& axes, const Point& p)
{
    return {axes.across.dot(p), axes.up.dot(p), axes.before.dot(p)};
}

} // namespace glim
