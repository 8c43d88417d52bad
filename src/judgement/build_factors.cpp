#include "judgement/build_factors.h"

#include "judgement/normal_quantile.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

double sigma(const Tolerance& tolerance, ToleranceWay way)
{
    return tolerance.spread == Spread::limits ? tolerance[way] / tolerance.sigmas : tolerance[way];
}

bool is_normal(const Tolerance& tolerance)
{
    return tolerance.spread == Spread::normal || tolerance.spread == Spread::limits;
}

} // namespace

std::vector<BuildFactor> build_factors(const std::vector<Tolerance>& tolerances)
{
    std::vector<BuildFactor> factors;
    for (std::size_t t = 0; t < tolerances.size(); ++t)
        for (const ToleranceWayWord& word : tolerance_way_words)
            if (tolerances[t][word.way] > 0)
                factors.push_back({t, word.way});
    return factors;
}

double deviation(const Tolerance& tolerance, ToleranceWay way, double u)
{
    if (is_normal(tolerance))
        return sigma(tolerance, way) * std::clamp(normal_quantile(u), -most_sigmas, most_sigmas);
    if (tolerance.spread == Spread::uniform)
        return tolerance[way] * (2 * u - 1);
    const double from_end = std::sqrt(2 * std::min(u, 1 - u)); // of the triangle's half width
    return tolerance[way] * (u < 0.5 ? from_end - 1 : 1 - from_end);
}

double stack_limit(const Tolerance& tolerance, ToleranceWay way)
{
    return tolerance.spread == Spread::normal ? stacked_sigmas * tolerance[way] : tolerance[way];
}

double most_deviation(const Tolerance& tolerance, ToleranceWay way)
{
    const double spread =
        is_normal(tolerance) ? most_sigmas * sigma(tolerance, way) : tolerance[way];
    return std::max(spread, stack_limit(tolerance, way));
}

} // namespace glim
