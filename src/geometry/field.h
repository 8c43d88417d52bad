#pragma once

#include "geometry/bearing.h"

#include <vector>

namespace glim {

/// A longitude-latitude rectangle, closed at all four ends: a bearing on the edge belongs to it.
/// A rectangle of no width or no height is a line, one of neither a point.
struct FieldRectangle {
    Angle h_least, h_most;
    Angle v_least, v_most;

    bool holds(const Bearing& b) const;
    friend bool operator==(const FieldRectangle&, const FieldRectangle&) = default;
};

/// The directions that a rule asks for: the union of its rectangles. A notch (inboard 20 instead of
/// 45 below the horizontal) is a field of two.
struct Field {
    std::vector<FieldRectangle> rectangles;

    bool holds(const Bearing& b) const;
    friend bool operator==(const Field&, const Field&) = default;
};

/// Where the field's outline turns, by V, then H: four for a rectangle, six for one with a notch. A
/// rectangle that is a line or a point adds its ends.
std::vector<Bearing> corners_of(const Field& field);

/// (H2 - H1)(sin V2 - sin V1), H in radians.
SolidAngle solid_angle(const FieldRectangle& r);

/// Of the union: what lies in several rectangles counts once.
SolidAngle solid_angle(const Field& field);

} // namespace glim
