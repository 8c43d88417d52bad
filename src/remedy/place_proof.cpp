#include "remedy/place_proof.h"

#include <algorithm>

namespace glim {

namespace {

/// A lens that grows so often is not going to be enough.
constexpr int most_rounds = 8;

/// The least growth of a round, as a share of the area: rounds end, within `size_accuracy`.
constexpr double least_growth = 0.003;

/// What a round of growth has to bring.
struct Wanted {
    double growth = 1; ///< of the area
    bool hopeless = false;
};

/// How much larger the lens would have to be for this verdict. Obstacles want another place.
void add(Wanted& wanted, const RuleRow& row, const LampVerdict& verdict)
{
    if (verdict.outcome == Outcome::met || verdict.outcome == Outcome::not_applicable ||
        asks_light(row.criterion))
        return;
    if (!asks_directions(row.criterion)) {
        wanted.hopeless = wanted.hopeless || verdict.outcome == Outcome::not_met;
        return;
    }
    if (!std::holds_alternative<LeastArea>(row.criterion) || verdict.least_visible <= Area()) {
        wanted.hopeless = true;
        return;
    }
    const double growth = (verdict.needed + verdict.mesh_error) / verdict.least_visible;
    wanted.growth = std::max({wanted.growth, growth, 1 + least_growth});
}

Wanted wanted_by(const Findings& findings)
{
    Wanted wanted;
    for (const CheckFindings& check : findings.checks)
        for (const RowFindings& row : check.rows) {
            if (row.not_chosen || !row.proof_from.empty())
                continue;
            if (row.together)
                add(wanted, row.row, *row.together);
            else
                for (const LampVerdict& verdict : row.lamps)
                    add(wanted, row.row, verdict);
        }
    return wanted;
}

} // namespace

PlaceProof proved(const LensPlace& place, LensFit fit, LensGauge& gauge,
                  std::span<const std::size_t> checks, const Workers& workers)
{
    PlaceProof proof{std::move(fit), {}, false};
    const Workers silent = workers.silent();
    const Angle step = gauge.session().study().sampling.step;
    for (int round = 0; round < most_rounds; ++round) {
        proof.findings = gauge.session().check(checks, step, silent);
        const Wanted wanted = wanted_by(proof.findings);
        if (wanted.hopeless)
            return proof;
        if (wanted.growth <= 1) {
            proof.holds = true;
            return proof;
        }
        const Area larger = place.shape.area(proof.fit.patch.width) * wanted.growth;
        const Length width = place.shape.width_for(larger);
        if (place.shape.across(width) > place.largest)
            return proof;
        proof.fit.too_small = proof.fit.patch.width;
        proof.fit.patch = place.carrier->cut(place.seat, place.shape, width);
        if (proof.fit.patch.filled < wholly_filled)
            return proof;
        gauge.put(proof.fit.patch.mesh);
    }
    return proof;
}

} // namespace glim
