#pragma once

#include "units/units.h"

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace glim {

/// A triangle of a lit face as one direction sees it, and how deep a relief has to be before each
/// of its corners is seen; straight between them.
struct LitPiece {
    std::array<double, 3> need; ///< mm along the push; 0 or less: it is seen already
    double area_mm2;            ///< projected
    std::uint32_t column = 0;   ///< see SightNeeds
};

/// In place of the depth where none is enough; mm.
inline constexpr double no_depth = 1e9;

/// The share of the piece that is seen once the relief is `depth_mm` deep, 0 to 1.
double share_freed(const LitPiece& piece, double depth_mm);

/// Of all pieces, mm2.
double area_freed(std::span<const LitPiece> pieces, double depth_mm);

/// The least depth of 0 or more at which `needed` is seen, to a part in 10^9 of the area there is.
/// Nothing where no depth is enough.
std::optional<double> depth_that_frees(std::span<const LitPiece> pieces, double needed_mm2);

} // namespace glim
