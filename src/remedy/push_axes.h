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
    double share;  ///< so far a point goes down in view for each mm that it is pushed

    /// `push` is unit. Where it is seen end on, `up` is any way across the view.
    PushAxes(const Direction& d, const Vector& push) : toward(d.vector())
    {
        const Vector seen = push - toward.dot(push) * toward;
        share = seen.norm();
        up = lowers() ? Vector(-seen / share) : ViewPlane(d).up;
        across = up.cross(toward);
    }
    bool lowers() const { return share > least_push_seen; }
};

/// A place as the axes have it, mm.
struct SeenPlace {
    double u; ///< across
    double y; ///< up
    double w; ///< how far towards the eye
};
inline SeenPlace seen_place(const PushAxes& axes, const Point& p)
{
    return {axes.across.dot(p), axes.up.dot(p), axes.toward.dot(p)};
}

} // namespace glim
