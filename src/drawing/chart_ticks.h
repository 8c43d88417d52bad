#pragma once

#include "units/units.h"

#include <vector>

namespace glim {

/// Round figures from `least` to `most`, evenly spaced, at most `most_ticks` of them and seldom
/// less than half as many. Requires: least <= most, most_ticks >= 2.
std::vector<double> area_ticks_mm2(double least, double most, int most_ticks);

/// The same for angles, which are round at other figures: 10, 15, 30, 45, 90 ...
std::vector<Angle> angle_ticks(Angle least, Angle most, int most_ticks);

} // namespace glim
