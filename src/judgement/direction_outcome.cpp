#include "judgement/direction_outcome.h"

#include <stdexcept>

namespace glim {

namespace {

/// The last bits of a sum of facets: an area that equals the threshold on paper meets it.
constexpr Area summing_error = square_millimetres(1e-6);

struct Judge {
    const LampLook& look;
    std::size_t at;
    Length hairline;

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

    template <class Other>
    DirectionOutcome operator()(const Other&) const
    {
        throw std::logic_error("this row looks in no direction");
    }

private:
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
                            Length hairline)
{
    return std::visit(Judge{look, at, hairline}, row.criterion);
}

Area tolerated_at(const LampLook& look, std::size_t at, Length hairline)
{
    return look.seen[at].outline * hairline;
}

} // namespace glim
