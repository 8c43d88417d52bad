#pragma once

#include "input/ies_edition.h"
#include "input/ies_numbers.h"

namespace glim {

/// The thirteen numbers of an LM-63 file between TILT and the angles.
struct IesLamp {
    LampSet lamps;
    bool absolute = false;
    double candela_factor = 1; ///< multiplier and all factors that the edition applies
    double lamp_factor = 1;    ///< the same without the multiplier
    std::size_t verticals = 0;
    std::size_t horizontals = 0;
    Goniometer goniometer = Goniometer::c;
    LitOpening opening;
};

/// Reads them. Refuses a file whose counts or type cannot be known.
IesLamp read_ies_lamp(PhotometricText& file, IesNumbers& numbers, const IesEditionRow& edition);

} // namespace glim
