#include "drawing/chart_ticks.h"

#include <cassert>
#include <cmath>

namespace glim {

namespace {

/// Of a step: a tick that misses an end by rounding alone is at the end.
constexpr double grain = 1e-9;

std::vector<double> multiples(double least, double most, double step)
{
    std::vector<double> ticks;
    const double last = std::floor(most / step + grain);
    for (double i = std::ceil(least / step - grain); i <= last; ++i)
        ticks.push_back(i * step);
    return ticks;
}

bool fits(double least, double most, double step, int most_ticks)
{
    return (most - least) / step < most_ticks - 1 + grain;
}

bool is_multiple(double x, double step)
{
    return std::abs(x / step - std::round(x / step)) < grain;
}

/// The finest that fits; or the next coarser one that has ticks at both ends, as rules like to
/// count.
double angle_step(double least, double most, int most_ticks)
{
    constexpr double whole_turn = 360, much_coarser = 2;
    double finest = 0;
    for (const double step :
         {0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 15.0, 20.0, 30.0, 45.0, 90.0, 180.0, whole_turn}) {
        if (!fits(least, most, step, most_ticks))
            continue;
        finest = finest > 0 ? finest : step;
        if (step > much_coarser * finest)
            break;
        if (is_multiple(least, step) && is_multiple(most, step))
            return step;
    }
    return finest > 0 ? finest : whole_turn;
}

} // namespace

std::vector<double> area_ticks_mm2(double least, double most, int most_ticks)
{
    assert(least <= most && most_ticks >= 2);
    if (least == most)
        return {least};
    // Ten to this power is below every step that could do.
    double decade = std::pow(10, std::floor(std::log10((most - least) / most_ticks)));
    for (;; decade *= 10)
        for (const double round : {1.0, 2.0, 5.0})
            if (fits(least, most, round * decade, most_ticks))
                return multiples(least, most, round * decade);
}

std::vector<Angle> angle_ticks(Angle least, Angle most, int most_ticks)
{
    assert(least <= most && most_ticks >= 2);
    const double step = angle_step(in_degrees(least), in_degrees(most), most_ticks);
    std::vector<Angle> ticks;
    for (const double tick : multiples(in_degrees(least), in_degrees(most), step))
        ticks.push_back(degrees(tick));
    return ticks;
}

} // namespace glim
