#include "judgement/normal_quantile.h"

#include <cmath>
#include <numbers>

namespace glim {

namespace {

/// Of the upper tail, 0 < tail <= 0.5, to 4.5e-4: C. Hastings, "Approximations for Digital
/// Computers", 1955, sheet 68.
double first_guess(double tail)
{
    const double t = std::sqrt(-2 * std::log(tail));
    return t - (2.515517 + t * (0.802853 + t * 0.010328)) /
                   (1 + t * (1.432788 + t * (0.189269 + t * 0.001308)));
}

double tail_above(double z) { return std::erfc(z / std::numbers::sqrt2) / 2; }

} // namespace

double normal_share_below(double z) { return tail_above(-z); }

double normal_quantile(double u)
{
    const double tail = u < 0.5 ? u : 1 - u;
    double z = first_guess(tail);
    // Each step squares the error and more (Halley): 1e-4, 1e-11, done.
    for (int step = 0; step < 3; ++step) {
        const double density = std::exp(-z * z / 2) / std::sqrt(2 * std::numbers::pi);
        const double newton = (tail_above(z) - tail) / density;
        z += newton / (1 - z * newton / 2);
    }
    return u < 0.5 ? -z : z;
}

} // namespace glim
