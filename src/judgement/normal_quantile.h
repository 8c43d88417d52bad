#pragma once

namespace glim {

/// The standard normal deviate below which the share `u` of all lies; 0 < u < 1. Within 1e-12 of
/// the root of the distribution function that the machine's own erfc gives.
double normal_quantile(double u);

/// The share of standard normal deviates below `z`.
double normal_share_below(double z);

} // namespace glim
