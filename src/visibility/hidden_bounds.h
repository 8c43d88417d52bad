#pragma once

#include "visibility/certificate.h"

namespace glim {

/// What is hidden by things that were not approved with the lamp, where the approved do not hide.
struct HiddenBounds {
    double low_mm2 = 0; ///< in the view plane
    double high_mm2 = 0;
    double rim_mm = 0; ///< of all shadows, the lamp's own too, in the view plane
};

/// Corners hidden at all, by the approved, by the others; `rim` belongs to the first.
struct HiddenCornersOf {
    const LitLook::Hidden& all;
    const LitLook::Hidden& approved;
    const LitLook::Hidden& others;
    const LitLook::Rim& rim;
};

/// A cell that the others do not touch, or that the approved hide wholly, adds nothing to either
/// bound; one that the others hide wholly and the approved nowhere adds its area to both; any other
/// adds its area to the higher. The rim across a cell is the straight way between its crossings or,
/// where all corners are lit and yet it may run there, the side of a square of twice the cell's
/// area. `marks` as in LitLook.
HiddenBounds hidden_by_others(const LitLook& look, const HiddenCornersOf& hidden,
                              std::span<const std::uint8_t> marks);

} // namespace glim
