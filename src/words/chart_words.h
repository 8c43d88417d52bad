#pragma once

#include "units/units.h"

#include <string>
#include <string_view>
#include <vector>

namespace glim {

/// Words as the other results have them, in the signs of print: "12 deg" becomes "12" with a degree
/// sign, "8 mm2" gets its raised 2. A unit is one only behind a number and at the end of a word.
/// What stands in `names` is somebody's own word, and stays as it is wherever it stands.
std::string typeset(std::string_view words, const std::vector<std::string>& names = {});

/// An angle on an axis: a true minus sign and a degree sign.
std::string typeset_angle(Angle angle);

/// A figure on an axis or a bar: to three decimals, with a true minus sign.
std::string typeset_figure(double figure);

/// "1131.4 mm" with its raised 2.
std::string typeset_area(double mm2);

} // namespace glim
