#pragma once

#include "units/units.h"

namespace glim {

/// What one direction sees of one lamp: projected areas perpendicular to it.
/// visible <= approved <= lens, and low <= visible <= high.
struct SeenArea {
    Area lens;     ///< closed form: nothing in the way at all
    Area approved; ///< hidden only by the lamp itself and by what was approved with it
    Area visible;  ///< hidden by everything
    /// Between these the true visible area lies: for certain if `certified`; else as far as the
    /// lattice's corners tell, for a thing that slips between all corners of a cell is not seen.
    Area low, high;
    /// Between these lies what is hidden by things not approved with the lamp, where what was
    /// approved hides nothing: the true `approved` less the true `visible`. Certain as above. Both
    /// are exactly 0 where nothing but the approved comes before a lit cell.
    Area hidden_low = {}, hidden_high = {};
    /// How far `visible` is likely to be off: two standard deviations. An estimate, not a bound.
    Area expected_error;
    /// Of cells whose corners are alike and across which a shadow's rim may run all the same; known
    /// only if `certified`. They are inside [low, high].
    Area missed = {};
    /// Of the shadows' rims on the lit face, whoever throws them, in the view plane. An estimate:
    /// to about a cell's side at its ends.
    Length rim = {};
    Length outline = {}; ///< of the lit face, in the view plane: see LitOutline
    /// `approved` and `visible` as sampled, every part weighed by how bright it is; in a unit of
    /// its own, the same for both. The areas themselves where the lamp is uniformly bright.
    Area weighed_approved = {}, weighed_visible = {};
    /// Whether contours prove the bounds. (Of a lamp that shows nothing there is nothing to prove,
    /// so a sum may start from SeenArea{}.)
    bool certified = true;

    Area hidden() const { return approved - visible; }
    /// Of another lamp seen from the same direction.
    SeenArea& operator+=(const SeenArea& other);
};

} // namespace glim
