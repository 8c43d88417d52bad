#include "judgement/build_design.h"

#include <algorithm>

namespace glim {

BuildDesign::BuildDesign(const std::vector<Tolerance>& tolerances, std::vector<BuildFactor> factors,
                         const ToleranceTask& task)
    : tolerances_(tolerances), factors_(std::move(factors)),
      sequence_(2 * factors_.size(), task.seed), each_((task.builds + shifts - 1) / shifts)
{
}

std::size_t BuildDesign::mixed_builds() const { return std::min(each_, most_mixed) * shifts; }

std::size_t BuildDesign::mixed_place(std::size_t i) const
{
    const std::size_t each = std::min(each_, most_mixed);
    return i / each * each_ + i % each;
}

/// Shares of both sets: first those of the first.
std::vector<double> BuildDesign::point(std::size_t i) const
{
    return sequence_.point(static_cast<std::uint32_t>(i / each_),
                           static_cast<std::uint32_t>(i % each_));
}

std::vector<double> BuildDesign::deviations(std::span<const double> shares) const
{
    std::vector<double> by;
    by.reserve(factors_.size());
    for (std::size_t f = 0; f < factors_.size(); ++f)
        by.push_back(deviation(tolerances_[factors_[f].tolerance], factors_[f].way, shares[f]));
    return by;
}

std::vector<double> BuildDesign::build(std::size_t i, std::span<const double> scale) const
{
    const std::vector<double> both = point(i);
    std::vector<double> by = deviations(std::span(both).first(factors_.size()));
    if (!scale.empty())
        for (std::size_t f = 0; f < by.size(); ++f)
            by[f] *= scale[factors_[f].tolerance];
    return by;
}

std::vector<double> BuildDesign::other(std::size_t i) const
{
    const std::vector<double> both = point(mixed_place(i));
    return deviations(std::span(both).subspan(factors_.size()));
}

std::vector<double> BuildDesign::mixed(std::size_t i, std::span<const std::size_t> factors) const
{
    std::vector<double> both = point(mixed_place(i));
    for (const std::size_t f : factors)
        both[f] = both[factors_.size() + f];
    return deviations(std::span(both).first(factors_.size()));
}

} // namespace glim
