#pragma once

#include "geometry/placement.h"
#include "model/lamp.h"

namespace glim {

/// The extreme outer edge of the vehicle on either side.
struct OuterEdge {
    Length from_median;
    bool derived = true; ///< half the overall width; else as the study gives it
};

/// The frame that everything is kept in: the user's own, so that places can be found again in CAD.
struct Vehicle {
    std::string category; ///< M1, N1, ... or a US class; may be empty
    std::string market;   ///< may be empty
    Direction forward = -Direction::x();
    Direction up = Direction::z();
    Length median;                       ///< where the median plane stands along `left()`
    std::optional<Length> overall_width; ///< never the bounding box: mirrors and lamps excluded
    /// From the median plane, mirrors and lamps excluded; half the overall width where missing.
    std::optional<Length> extreme_outer_edge;
    Side modelled_side = Side::left; ///< median: the whole body is modelled

    /// As seated: up x forward.
    Direction left() const;
    /// Away from the median plane on that side; on the plane itself to the left.
    Direction outboard(Side side) const;
    Placement across_median() const;
    /// Nothing if neither the edge nor the overall width is given.
    std::optional<OuterEdge> outer_edge() const;
    /// How far to the left of the median plane; negative on the right.
    Length lateral(const Point& p) const;
};

/// The ground under the vehicle in one state of load.
struct Ground {
    Point on = Point::Zero(); ///< vehicle frame
    Direction up = Direction::z();

    Length height_of(const Point& p) const { return millimetres(up.dot(Vector(p - on))); }
};

/// How a study makes a state of its own: from the ground of another, or outright.
struct StateOrigin {
    std::string from; ///< empty: it says where its ground is; the rest is 0 then
    Length rise;      ///< the body stands so much higher above the ground
    Angle pitch;      ///< its nose is so much up
};

/// The ground in a state of load or of ride height.
struct GroundState {
    std::string state; ///< "unladen", "curb" or "design", or a name of the study's own
    Ground ground;
    /// Given for a state that no rule knows, [[state]] of a study: checks in it are information,
    /// and no verdicts.
    std::optional<StateOrigin> own = {};

    bool of_rules() const { return !own; }
};

} // namespace glim
