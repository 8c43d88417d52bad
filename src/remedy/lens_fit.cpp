#include "remedy/lens_fit.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace glim {

namespace {

/// So many needs, those met worst by the first lens, decide the size; a check has the last word.
constexpr std::size_t deciding_needs = 24;

/// Across a lens so many rays are enough to tell which needs are met worst.
constexpr double coarse_rays_across = 16;

/// The search ends where the lens that is enough and the one that is not are so near, as a share of
/// the area: well within `size_accuracy`, which a check's own margin may add to.
constexpr double search_accuracy = 0.004;

/// A step of the search aims past the size by this share, so that it is bracketed at once.
constexpr double overshoot = 0.0015;

constexpr int most_steps = 24;

class Fitting {
public:
    Fitting(const LensPlace& place, LensGauge& gauge, const NeedsAsked& asked,
            const Workers& workers)
        : place_(place), gauge_(gauge), asked_(asked), workers_(workers),
          most_(place.shape.area(widest()))
    {
    }

    FitOrNot fit(Area first)
    {
        keep_deciding(std::clamp(first, square_millimetres(1), most_));
        Area area = std::clamp(first * (1 + overshoot), square_millimetres(1), most_);
        for (int step = 0; step < most_steps && !(near_enough() && verified()); ++step) {
            const double share = met_share(area);
            if (share < 1 && (area >= most_ || !filled_))
                return {std::nullopt, filled_ ? NoFit::too_large : NoFit::no_room};
            area = next(area, share);
        }
        return found();
    }

private:
    /// The width at which the outline is `largest` across.
    Length widest() const
    {
        return millimetres(place_.largest / place_.shape.across(millimetres(1)));
    }

    LensPatch cut(Area area) const
    {
        return place_.carrier->cut(place_.seat, place_.shape, place_.shape.width_for(area));
    }

    void keep_deciding(Area first)
    {
        LensPatch patch = cut(first);
        const Length feature =
            std::max(gauge_.session().study().sampling.feature, patch.width / coarse_rays_across);
        gauge_.put(std::move(patch.mesh));
        const std::vector<double> shares =
            gauge_.met_shares(asked_.looks, asked_.needs, feature, workers_);
        std::vector<std::size_t> order(shares.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::stable_sort(order.begin(), order.end(),
                         [&](std::size_t a, std::size_t b) { return shares[a] < shares[b]; });
        order.resize(std::min(order.size(), deciding_needs));
        for (const std::size_t i : order)
            deciding_.push_back(asked_.needs[i]);
    }

    /// The least share, at the study's own density of rays.
    double met_share(Area area)
    {
        LensPatch patch = cut(area);
        filled_ = patch.filled >= wholly_filled;
        gauge_.put(patch.mesh);
        const auto shares = gauge_.met_shares(asked_.looks, deciding_,
                                              gauge_.session().study().sampling.feature, workers_);
        const double least = shares.empty() ? 1 : *std::min_element(shares.begin(), shares.end());
        if (least >= 1) {
            enough_ = area;
            best_ = std::move(patch);
        } else {
            short_ = area;
        }
        return least;
    }

    bool near_enough() const
    {
        return enough_ &&
               (*enough_ <= square_millimetres(1) || *enough_ <= short_ * (1 + search_accuracy));
    }

    /// Whether the lens meets the needs that did not decide too; else they do from now on.
    bool verified()
    {
        if (!asked_.verify)
            return true;
        gauge_.put(best_->mesh);
        const auto shares = gauge_.met_shares(asked_.looks, asked_.needs,
                                              gauge_.session().study().sampling.feature, workers_);
        const auto least = std::min_element(shares.begin(), shares.end());
        if (*least >= 1)
            return true;
        deciding_.push_back(asked_.needs[static_cast<std::size_t>(least - shares.begin())]);
        short_ = *enough_;
        enough_.reset();
        best_.reset();
        return false;
    }

    /// Where the areas' proportion puts it; in the middle where that is known to be wrong.
    Area next(Area area, double share) const
    {
        constexpr double least_share = 0.25; // grow four times at most
        const double past = share < 1 ? 1 + overshoot : 1 - overshoot;
        Area aim = area * (past / std::max(share, least_share));
        if (aim <= short_ || (enough_ && aim >= *enough_))
            aim = enough_ ? (short_ + *enough_) / 2 : area * 2;
        return std::clamp(aim, square_millimetres(1), most_);
    }

    FitOrNot found()
    {
        if (!best_)
            return {std::nullopt, NoFit::not_met};
        if (best_->filled < wholly_filled)
            return {std::nullopt, NoFit::no_room};
        gauge_.put(best_->mesh);
        std::optional<Length> too_small;
        if (short_ > Area())
            too_small = place_.shape.width_for(short_);
        return {LensFit{std::move(*best_), too_small}, NoFit::not_met};
    }

    const LensPlace& place_;
    LensGauge& gauge_;
    const NeedsAsked& asked_;
    const Workers& workers_;
    Area most_;
    std::vector<AreaNeed> deciding_;
    Area short_;                 ///< the largest that was not enough
    std::optional<Area> enough_; ///< the least that was
    std::optional<LensPatch> best_;
    bool filled_ = false; ///< the last one
};

FitOrNot nominal(const LensPlace& place, LensGauge& gauge)
{
    LensPatch patch = place.carrier->cut(place.seat, place.shape, nominal_lens);
    if (patch.filled < wholly_filled)
        return {std::nullopt, NoFit::no_room};
    gauge.put(patch.mesh);
    return {LensFit{std::move(patch), std::nullopt}, NoFit::not_met};
}

} // namespace

FitOrNot fit_lens(const LensPlace& place, Area first, LensGauge& gauge, const NeedsAsked& asked,
                  const Workers& workers)
{
    const bool sized = std::any_of(asked.needs.begin(), asked.needs.end(),
                                   [](const AreaNeed& need) { return need.area > Area(); });
    return sized ? Fitting(place, gauge, asked, workers).fit(first) : nominal(place, gauge);
}

} // namespace glim
