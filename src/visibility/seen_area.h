#pragma once

#include "units/units.h"

namespace glim {

/// What one direction sees of one lamp: projected areas perpendicular to it.
/// visible <= approved <= lens, and low <= visible <= high.
struct SeenArea {
    Area lens;     ///< closed form: nothing in the way at all
    Area approved; ///< hidden only by the lamp itself and by what was approved with it
    Area visible;  ///< hidden by everything
    /// Between these the true visible area lies, as far as the lattice's corners tell: a thing that
    /// slips between all corners of a cell is not seen (see docs/accuracy.md).
    Area low, high;
    /// How far `visible` is likely to be off: two standard deviations. An estimate, not a bound.
    Area expected_error;

    Area hidden() const { return approved - visible; }
    SeenArea& operator+=(const SeenArea& other);
};

} // namespace glim
