#pragma once

#include "judgement/session.h"

namespace glim {

/// How far a lamp moves each way: mm and degrees, in the order of MoveWay. It turns and tilts about
/// the middle of its lit faces, then shifts.
struct LampMove {
    std::array<double, move_way_count> by = {};

    double& operator[](MoveWay way) { return by[static_cast<std::size_t>(way)]; }
    double operator[](MoveWay way) const { return by[static_cast<std::size_t>(way)]; }
    friend bool operator==(const LampMove&, const LampMove&) = default;
};
LampMove operator*(double share, const LampMove& move);
LampMove operator+(const LampMove& a, const LampMove& b);

/// A lamp with everything that moves with it.
class MovableLamp {
public:
    MovableLamp(const Study& study, LampId lamp);

    /// Vehicle frame from where it was drawn.
    Placement placement(const LampMove& move) const;
    void place(Session& session, const LampMove& move) const;
    /// How far the point of the lit faces goes that goes farthest.
    Length farthest(const LampMove& move) const;

    /// Its lit surfaces, the whole lenses of trimmed ones, and what names it in `moves_with`.
    const std::vector<SurfaceId>& surfaces() const { return surfaces_; }
    /// Itself, and lamps that emit from one of these surfaces.
    const std::vector<LampId>& lamps() const { return lamps_; }
    LampId lamp() const { return lamp_; }

private:
    LampId lamp_;
    std::vector<SurfaceId> surfaces_;
    std::vector<LampId> lamps_;
    std::vector<Point> lit_; ///< corners of its lit faces, as drawn
    Point middle_;
    Vector forward_, outboard_, up_;  ///< of the vehicle, for shifts
    Direction turn_axis_, tilt_axis_; ///< counter-clockwise is the positive sense
};

} // namespace glim
