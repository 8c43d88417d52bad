#pragma once

#include "remedy/lens_fit.h"

namespace glim {

/// What a check said of a lamp at a place.
struct PlaceProof {
    LensFit fit; ///< grown where the check wanted more than the first measure
    Findings findings;
    /// Every row of area and of obstacles is met, and no row of place is broken. Rows of light may
    /// be open: nothing is known of a new lamp's light.
    bool holds = false;
};

/// Checks the lens in `gauge`, and lets it grow as far as the check says where it is not enough
/// yet. `checks` are those of the gauge's study. Throws Stopped.
PlaceProof proved(const LensPlace& place, LensFit fit, LensGauge& gauge,
                  std::span<const std::size_t> checks, const Workers& workers);

} // namespace glim
