#pragma once

#include "geometry/field.h"
#include "model/lamp.h"

#include <string>

namespace glim {

/// What H is called in words, which depends on the axis it is counted from and on where the lamp
/// stands: "inboard" and "outboard" for most; to the front and to the rear of an axis that points
/// outboard; to the left and to the right of a lamp on the median plane.
struct BearingSpeech {
    ReferenceAxis axis = ReferenceAxis::forward;
    Side side = Side::left;
};

/// What the two ways along an angle are called, for the ends of an axis.
struct AxisEnds {
    std::string negative, positive;
};
AxisEnds ends_of_h(const BearingSpeech& speech);
AxisEnds ends_of_v();

/// "41 deg inboard, 6 deg down"; "straight ahead, level" on the axis.
std::string bearing_words(const Bearing& b, const BearingSpeech& speech);

/// The same for those who count: "H -41, V -6".
std::string bearing_figures(const Bearing& b);

/// "45 to 38 deg inboard, 15 down to 15 up"; a range of one direction reads as bearing_words.
std::string range_words(const FieldRectangle& range, const BearingSpeech& speech);

/// Its rectangles, joined by "and".
std::string field_words(const Field& field, const BearingSpeech& speech);

} // namespace glim
