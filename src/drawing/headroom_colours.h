#pragma once

#include "drawing/colour.h"
#include "units/units.h"

#include <string>
#include <vector>

namespace glim {

/// What has this headroom or less, down to the band before, and how it is painted.
struct HeadroomBand {
    Length below;
    Colour colour;
    std::string words; ///< "1 to 2 mm"
};

/// From what lies inside a space (dark orange, and hatched in pictures) over dark violet for what
/// is tight, blue and green to light yellow: each lighter than the one before, so that they read
/// the same on grey paper and to those who confuse red and green. The last one, grey, is whatever
/// has more.
const std::vector<HeadroomBand>& headroom_bands();

/// The band of a headroom; below zero the first.
const HeadroomBand& headroom_band(Length headroom);

} // namespace glim
