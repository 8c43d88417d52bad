#include "judgement/direction_outcome.h"

#include <stdexcept>

namespace glim {

namespace {

/// The last bits of a sum of facets: an area that equals the threshold on paper meets it.
constexpr Area summing_error = square_millimetres(1e-6);

/// As a share: directions go through vectors before a file is asked, and intensities through sums.
constexpr double light_rounding = 1e-9;

struct Judge {
    const LampLook& look;
    std::size_t at;
    Length hairline;
    Multiplier multiplier;

    /// Undecided by what is known; which of the two errors is to blame depends on whether the areas
    /// are as narrow as they get.
    DirectionOutcome undecided(bool exactly_known, Outcome at_worst, Outcome at_best) const
    {
        return {Outcome::undecided,
                exactly_known ? Because::mesh_accuracy : Because::numerical_bounds, at_worst,
                at_best};
    }
    bool visible_known() const { return look.exact[at].has_value(); }
    bool hidden_known() const { return look.exact_hidden[at].has_value(); }

    DirectionOutcome operator()(const LeastArea& criterion) const
    {
        const Area needed = criterion.area - summing_error;
        const Area error = look.mesh_error[at];
        if (look.high(at) + error < needed)
            return {Outcome::not_met, look.seen[at].lens < needed ? Because::lens_too_small
                                                                  : Because::of_the_figures};
        if (look.low(at) - error < needed)
            return undecided(visible_known(), Outcome::not_met, Outcome::met);
        return criterion.proof_if_hidden ? met_unless_hidden() : DirectionOutcome{Outcome::met};
    }

    DirectionOutcome operator()(const NoObstacle&) const
    {
        if (look.approved(at) <= summing_error)
            return hidden_known() || look.seen[at].lens <= summing_error
                       ? DirectionOutcome{Outcome::not_met, Because::shows_no_surface}
                       : undecided(false, Outcome::not_met, Outcome::met);
        return met_unless_any_hidden();
    }

    DirectionOutcome operator()(const MostHidden& criterion) const
    {
        const Area allowed = look.approved(at) * criterion.share;
        const Area error = look.mesh_error[at];
        if (look.approved(at) <= summing_error)
            return {Outcome::not_met, Because::shows_no_surface};
        if (look.hidden_low(at) > allowed + error + summing_error)
            return {Outcome::not_met};
        return look.hidden_high(at) + error <= allowed + summing_error
                   ? DirectionOutcome{Outcome::met}
                   : undecided(hidden_known(), Outcome::not_met, Outcome::met);
    }

    DirectionOutcome operator()(const LeastIntensity& criterion) const
    {
        return at_least(criterion.least);
    }

    DirectionOutcome operator()(const LightTable& criterion) const
    {
        return at_least(least_toward(criterion, look.toward[at]).value());
    }

    DirectionOutcome operator()(const MostIntensity& criterion) const
    {
        const std::optional<Intensity> whole = look.light->toward[at].whole;
        if (!whole)
            return open_for(Because::outside_measured_range);
        if (*whole > criterion.most * (1 + light_rounding))
            return {Outcome::not_met, Because::too_much_light};
        return {Outcome::met};
    }

    template <class Other>
    DirectionOutcome operator()(const Other&) const
    {
        throw std::logic_error("this row looks in no direction");
    }

private:
    static DirectionOutcome open_for(Because because)
    {
        return {Outcome::undecided, because, Outcome::not_met, Outcome::met};
    }

    DirectionOutcome at_least(Intensity least) const
    {
        const LightToward& light = look.light->toward[at];
        if (!light.whole)
            return open_for(Because::outside_measured_range);
        const Intensity enough = *light.whole * (1 + light_rounding);
        if (enough < least * multiplier.least)
            return {Outcome::not_met, Because::too_little_light};
        if (light.shows_no_surface || look.approved(at) <= summing_error)
            return open_for(Because::light_without_surface);
        if (enough < least * multiplier.most)
            return open_for(Because::multiplier_not_known);
        DirectionOutcome found = met_unless_any_hidden();
        if (found.outcome == Outcome::proof_due)
            found.would_suffice =
                *look.light_left(at) * (1 + light_rounding) >= least * multiplier.most;
        return found;
    }

    /// Proof due where a part is hidden, not met where all is.
    DirectionOutcome met_unless_any_hidden() const
    {
        const Area tolerated = tolerated_at(look, at, hairline);
        if (look.hidden_high(at) <= tolerated)
            return {Outcome::met};
        const bool some_in_view = look.low(at) > tolerated;
        const bool surely_hidden = look.hidden_low(at) > tolerated + look.mesh_error[at];
        if (surely_hidden && some_in_view)
            return {Outcome::proof_due};
        if (hidden_known() && look.high(at) <= tolerated)
            return {Outcome::not_met, Because::wholly_hidden};
        return undecided(hidden_known(), some_in_view ? Outcome::proof_due : Outcome::not_met,
                         surely_hidden ? Outcome::proof_due : Outcome::met);
    }

    DirectionOutcome met_unless_hidden() const
    {
        const Area tolerated = tolerated_at(look, at, hairline);
        if (look.hidden_high(at) <= tolerated)
            return {Outcome::met};
        if (look.hidden_low(at) > tolerated + look.mesh_error[at])
            return {Outcome::proof_due, Because::proof_to_be_agreed};
        return undecided(hidden_known(), Outcome::proof_due, Outcome::met);
    }
};

} // namespace

DirectionOutcome outcome_at(const RuleRow& row, const LampLook& look, std::size_t at,
                            Length hairline, const Multiplier& multiplier)
{
    return std::visit(Judge{look, at, hairline, multiplier}, row.criterion);
}

Area tolerated_at(const LampLook& look, std::size_t at, Length hairline)
{
    return look.seen[at].outline * hairline;
}

} // namespace glim
