#pragma once

#include "model/goniometer.h"

#include <optional>
#include <vector>

namespace glim {

/// Luminous intensities over the two angles of a goniometer, as filed but with nothing left to be
/// mirrored: type c goes round, from C 0 to C 360, both written.
///
/// Between its angles the intensity is bilinear in the file's own two angles. Beyond them it is not
/// known: it is never taken for zero.
struct IntensityGrid {
    Goniometer goniometer = Goniometer::c;
    std::vector<Angle> horizontal;  ///< H or C, ascending, at least two
    std::vector<Angle> vertical;    ///< V or gamma, ascending, at least two
    std::vector<Intensity> candela; ///< all verticals of the first horizontal first

    Intensity at(std::size_t h, std::size_t v) const { return candela[h * vertical.size() + v]; }
    friend bool operator==(const IntensityGrid&, const IntensityGrid&) = default;
};

/// So near the measured range counts as in it: an angle that went through a vector and back has
/// lost some 1e-13 degrees.
inline constexpr Angle range_grain = degrees(1e-9);

/// Nothing outside the measured range, which is closed. At a pole any angle about it will do; where
/// the planes disagree there, the one at 0 (or the measured one nearest to it) is taken.
std::optional<Intensity> intensity_at(const IntensityGrid& grid, const FileAngles& angles);

/// `d` in the file's own axes; see Goniometer.
std::optional<Intensity> intensity_toward(const IntensityGrid& grid, const Direction& d);

/// Closed at all ends.
struct MeasuredRange {
    Angle h_least, h_most;
    Angle v_least, v_most;
};
MeasuredRange measured_range(const IntensityGrid& grid);

struct Peak {
    Intensity intensity;
    FileAngles at; ///< of several equal ones, the one with the least |v|, then the least |h|
};
/// Of the grid's own points; what lies between them is nowhere higher.
Peak peak_of(const IntensityGrid& grid);

} // namespace glim
