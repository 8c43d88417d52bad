#include "judgement/estimate.h"

#include "judgement/light_rows.h"

#include <algorithm>

namespace glim {

namespace {

/// Smaller is worse news.
int rank_of(const LightEstimate& estimate)
{
    return estimate.suffices ? (*estimate.suffices ? 2 : 0) : 1;
}

/// What one row of the proof says of one lamp; nothing where it does not apply or has no file.
std::optional<LightEstimate> said_by(const RowFindings& proof, const LampVerdict& verdict)
{
    switch (verdict.outcome) {
    case Outcome::not_applicable:
    case Outcome::no_photometric_data:
        return std::nullopt;
    case Outcome::met:
        return LightEstimate{.suffices = true, .row = proof.row.id};
    case Outcome::not_met:
        return LightEstimate{.suffices = false, .because = verdict.because, .row = proof.row.id};
    case Outcome::proof_due:
        return LightEstimate{.suffices = verdict.estimate->suffices, .row = proof.row.id};
    case Outcome::undecided:
        break;
    }
    return LightEstimate{.suffices = {}, .because = verdict.because, .row = proof.row.id};
}

/// Of a row with a proof whose rows are among the check's.
std::optional<LightEstimate> estimate_of(const RuleRow& row, std::size_t lamp,
                                         const CheckFindings& check, const Study& study)
{
    std::optional<LightEstimate> worst;
    for (const RuleRow* asked : proof_rows(row, study))
        for (const RowFindings& proof : check.rows) {
            if (proof.proof_from != row.proof->table || proof.row.id != asked->id)
                continue;
            const std::optional<LightEstimate> said = said_by(proof, proof.lamps[lamp]);
            if (said && (!worst || rank_of(*said) < rank_of(*worst)))
                worst = said;
        }
    return worst;
}

} // namespace

void add_estimates(CheckFindings& check, const Study& study)
{
    for (RowFindings& row : check.rows)
        for (std::size_t lamp = 0; row.row.proof && lamp < row.lamps.size(); ++lamp)
            if (row.lamps[lamp].outcome == Outcome::proof_due)
                row.lamps[lamp].estimate = estimate_of(row.row, lamp, check, study);
}

} // namespace glim
