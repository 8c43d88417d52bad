#pragma once

#include "units/units.h"

#include <cstddef>
#include <string>

namespace glim {

// How numbers are written, once for every output:
//   JSON         the shortest decimal that reads back as the same double
//   CSV          areas to 0.001 mm2, lengths to 0.001 mm, angles to 0.000001 deg, solid angles to
//                0.000001 sr, intensities to 0.0001 cd
//   for people   areas to 0.1 mm2 (0.001 below 1 mm2), angles to 0.01 deg
// Trailing zeros are dropped, the point is a point in every country, and there is no -0.
// All require finite numbers.

/// The shortest decimal that reads back as the same double.
std::string shortest(double value);
/// Rounded to `decimals`, exactly halfway cases to even: 0.5 -> "0".
std::string rounded(double value, int decimals);
/// The same with all its decimals, so that columns of figures stand under each other.
std::string with_decimals(double value, int decimals);

std::string csv_number(Area area);
std::string csv_number(Length length);
std::string csv_number(Angle angle);
std::string csv_number(SolidAngle solid_angle);
std::string csv_number(Intensity intensity);

/// "1 direction", "31 directions"
std::string counted(std::size_t count, const std::string& thing);
/// "712.3 mm2"
std::string area_words(Area area);
/// "41.5 deg"
std::string angle_words(Angle angle);
/// "41.5", where the unit stands elsewhere
std::string bare_angle(Angle angle);
/// "38.1 %"; "100 %" and "0 %" are said only of the whole and of nothing, however near.
std::string share_words(double part, double whole);

} // namespace glim
