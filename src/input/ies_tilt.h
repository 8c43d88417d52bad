#pragma once

#include "input/ies_header.h"
#include "input/ies_numbers.h"
#include "input/read_ies.h"

namespace glim {

/// Reads what TILT=INCLUDE has put before the lamp's numbers, or checks the file that it names, and
/// warns that the factors are not applied.
void read_ies_tilt(PhotometricText& file, const IesHeader& header, IesNumbers& numbers,
                   const TiltLookup& tilt_file);

} // namespace glim
