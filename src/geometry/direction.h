#pragma once

#include "geometry/vector.h"

namespace glim {

/// A unit vector; nothing else can be made. For an observer it points from the lamp *towards* the
/// eye, that is, the way the light goes.
class Direction {
public:
    /// Requires: `v` is finite and not zero.
    static Direction along(const Vector& v);
    static Direction x() { return Direction(Vector::UnitX()); }
    static Direction y() { return Direction(Vector::UnitY()); }
    static Direction z() { return Direction(Vector::UnitZ()); }

    const Vector& vector() const { return v_; }
    Direction operator-() const { return Direction(-v_); }
    double dot(const Direction& other) const { return v_.dot(other.v_); }
    double dot(const Vector& other) const { return v_.dot(other); }

private:
    explicit Direction(const Vector& v) : v_(v) {}
    Vector v_;
};

/// The right-handed pair (across, up) that spans the plane perpendicular to `d`, with
/// across x up = d. Depends on nothing but `d`, so that the same direction gives the same plane.
struct ViewPlane {
    Direction toward;
    Vector across;
    Vector up;

    explicit ViewPlane(const Direction& d);
    Point2 project(const Point& p) const { return {across.dot(p), up.dot(p)}; }
};

} // namespace glim
