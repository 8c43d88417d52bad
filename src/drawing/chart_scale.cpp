#include "drawing/chart_scale.h"

#include "drawing/chart_ticks.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// A figure of a decade that misses an end by rounding alone is at the end.
constexpr double grain = 1e-9;

std::vector<double> decade_ticks(double least, double most, const std::vector<double>& of_each)
{
    std::vector<double> ticks;
    for (double decade = std::pow(10, std::floor(std::log10(least))); decade <= most; decade *= 10)
        for (const double part : of_each)
            if (part * decade >= least * (1 - grain) && part * decade <= most * (1 + grain))
                ticks.push_back(part * decade);
    return ticks;
}

} // namespace

double ChartScale::share_of(double figure) const
{
    if (!logarithmic)
        return (figure - least) / (most - least);
    return figure > 0 ? std::log(figure / least) / std::log(most / least) : 0;
}

double ChartScale::figure_at(double share) const
{
    return logarithmic ? least * std::pow(most / least, share) : least + share * (most - least);
}

std::vector<double> ChartScale::ticks(int most_ticks) const
{
    if (!logarithmic)
        return area_ticks_mm2(least, most, most_ticks);
    std::vector<double> fine = decade_ticks(least, most, {1, 2, 5});
    return static_cast<int>(fine.size()) <= most_ticks ? fine : decade_ticks(least, most, {1});
}

ChartScale whole_decades(double least, double most)
{
    const double lower = std::floor(std::log10(least) + grain);
    const double upper = std::max(std::ceil(std::log10(most) - grain), lower + 1);
    return {std::pow(10, lower), std::pow(10, upper), true};
}

} // namespace glim
