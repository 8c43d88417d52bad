#pragma once

#include "model/intensity_grid.h"

#include <string>
#include <vector>

namespace glim {

/// Intensities along a line through a distribution.
struct IntensityProfile {
    std::string title; ///< "Along H at V 0, cd"
    std::string angle; ///< what the angle of its points is called: "H"
    struct Point {
        Angle at;
        Intensity intensity;
    };
    std::vector<Point> points; ///< evenly spaced, 25 at most
};

/// The lines that show most: types a and b along H at V 0 (or at the measured V nearest to it) and
/// along V at H 0; type c along gamma through C 0 and, negative, C 180, then through C 90 and C
/// 270. Points outside the measured range are left out.
std::vector<IntensityProfile> intensity_profiles(const IntensityGrid& grid);

/// One line a point: angle, figure, a bar of `#`. All bars are to the scale of `full`, which is as
/// long as `bar_columns`; what is not 0 has one `#` at least.
std::vector<std::string> profile_lines(const IntensityProfile& profile, Intensity full,
                                       int bar_columns);

} // namespace glim
