#include "judgement/build_statistics.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

namespace glim {

namespace {

constexpr double normal_95 = 1.959963984540054;

/// Student's 97.5 % quantile for 1 to 29 degrees of freedom: M. Abramowitz, I. A. Stegun, "Handbook
/// of Mathematical Functions", table 26.10.
constexpr std::array student_95 = {12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306,
                                   2.262,  2.228, 2.201, 2.179, 2.160, 2.145, 2.131, 2.120,
                                   2.110,  2.101, 2.093, 2.086, 2.080, 2.074, 2.069, 2.064,
                                   2.060,  2.056, 2.052, 2.048, 2.045};

constexpr std::size_t bins = 24;

double mean_of(std::span<const double> values)
{
    return std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
}

double squares_about(std::span<const double> values, double mean)
{
    double sum = 0;
    for (const double v : values)
        sum += (v - mean) * (v - mean);
    return sum;
}

/// The value below which that share lies; between two neighbours in proportion.
double quantile(const std::vector<double>& sorted, double share)
{
    const double at = share * static_cast<double>(sorted.size() - 1);
    const auto below = static_cast<std::size_t>(at);
    const std::size_t above = std::min(below + 1, sorted.size() - 1);
    return sorted[below] + (at - static_cast<double>(below)) * (sorted[above] - sorted[below]);
}

Histogram histogram_of(const std::vector<double>& sorted)
{
    Histogram histogram{sorted.front(), 0, {}};
    const double range = sorted.back() - sorted.front();
    if (range <= 0) {
        histogram.counts = {sorted.size()};
        return histogram;
    }
    histogram.width = range / bins;
    histogram.counts.resize(bins);
    for (const double figure : sorted) {
        const auto bin = static_cast<std::size_t>((figure - histogram.least) / histogram.width);
        ++histogram.counts[std::min(bin, bins - 1)];
    }
    return histogram;
}

/// Of products of what the second set is off its mean by what mixing changes: near 0 where little
/// is changed, so that small shares are found well.
double mean_product(std::span<const double> b, std::span<const double> a,
                    std::span<const double> mixed, double mean)
{
    double sum = 0;
    for (std::size_t i = 0; i < b.size(); ++i)
        sum += (b[i] - mean) * (mixed[i] - a[i]);
    return sum / static_cast<double>(b.size());
}

double half_mean_square(std::span<const double> x, std::span<const double> y)
{
    double sum = 0;
    for (std::size_t i = 0; i < x.size(); ++i)
        sum += (x[i] - y[i]) * (x[i] - y[i]);
    return sum / (2 * static_cast<double>(x.size()));
}

} // namespace

ShareOfBuilds share_of(std::size_t met, std::size_t builds)
{
    if (builds == 0)
        return {};
    const auto n = static_cast<double>(builds);
    const double p = static_cast<double>(met) / n;
    const double z2 = normal_95 * normal_95;
    const double centre = (p + z2 / (2 * n)) / (1 + z2 / n);
    const double half = normal_95 / (1 + z2 / n) * std::sqrt(p * (1 - p) / n + z2 / (4 * n * n));
    return {met, builds, p, met == 0 ? 0 : centre - half, met == builds ? 1 : centre + half};
}

FigureSpread spread_of(std::vector<double> figures)
{
    std::sort(figures.begin(), figures.end());
    FigureSpread spread;
    spread.mean = mean_of(figures);
    if (figures.size() > 1)
        spread.standard_deviation = std::sqrt(squares_about(figures, spread.mean) /
                                              static_cast<double>(figures.size() - 1));
    spread.least = figures.front();
    spread.most = figures.back();
    spread.one_percent = quantile(figures, 0.01);
    spread.median = quantile(figures, 0.5);
    spread.ninety_nine_percent = quantile(figures, 0.99);
    spread.histogram = histogram_of(figures);
    return spread;
}

Estimate estimate_from(std::span<const double> estimates)
{
    const double mean = mean_of(estimates);
    const auto n = static_cast<double>(estimates.size());
    const double error = std::sqrt(squares_about(estimates, mean) / (n * (n - 1)));
    const double half = student_95[estimates.size() - 2] * error;
    return {mean, mean - half, mean + half};
}

std::optional<VarianceShare> variance_share(const MixedFigures& figures, std::size_t shifts)
{
    std::vector<double> both(figures.a.begin(), figures.a.end());
    both.insert(both.end(), figures.b.begin(), figures.b.end());
    const double mean = mean_of(both);
    const double variance = squares_about(both, mean) / static_cast<double>(both.size());
    if (variance <= 0)
        return std::nullopt;
    const std::size_t each = figures.a.size() / shifts;
    std::vector<double> first, total;
    for (std::size_t s = 0; s < shifts; ++s) {
        const auto of_shift = [&](std::span<const double> all) {
            return all.subspan(s * each, each);
        };
        const auto mixed = of_shift(figures.mixed);
        const auto a = of_shift(figures.a);
        first.push_back(mean_product(of_shift(figures.b), a, mixed, mean) / variance);
        total.push_back(half_mean_square(a, mixed) / variance);
    }
    return VarianceShare{estimate_from(first), estimate_from(total)};
}

} // namespace glim
