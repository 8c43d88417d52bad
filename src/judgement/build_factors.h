#pragma once

#include "model/tolerance.h"

namespace glim {

/// One way of one tolerance: it varies from build to build, by itself.
struct BuildFactor {
    std::size_t tolerance = 0; ///< place among the tolerances
    ToleranceWay way = ToleranceWay::forward;
};

/// Every way with a figure above 0, in the order of the tolerances and ways.
std::vector<BuildFactor> build_factors(const std::vector<Tolerance>& tolerances);

/// Normal deviates are cut off here: of seven million builds one in fifty would go further.
inline constexpr double most_sigmas = 5.5;
/// Where a normal distribution's figure is its standard deviation, stack-ups are sought so far out.
inline constexpr double stacked_sigmas = 3;

/// How far the build is off, mm or degrees, where the share `u` of builds is off by less; 0 < u
/// < 1.
double deviation(const Tolerance& tolerance, ToleranceWay way, double u);

/// The limit to either side within which stack-ups are sought: the figure itself, of a normal
/// distribution three standard deviations.
double stack_limit(const Tolerance& tolerance, ToleranceWay way);

/// No build is further off.
double most_deviation(const Tolerance& tolerance, ToleranceWay way);

} // namespace glim
