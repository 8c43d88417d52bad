#include "report/directions_csv.h"

#include "report/csv.h"
#include "words/look_words.h"
#include "words/numbers.h"

#include <algorithm>
#include <map>

namespace glim {

namespace {

using WorstOutcomes = std::map<std::size_t, Outcome>; ///< by the place in the look

void take_worse(WorstOutcomes& worst, const LampVerdict& verdict)
{
    for (const DirectionVerdict& direction : verdict.directions) {
        const auto [known, is_new] = worst.emplace(direction.at, direction.outcome);
        if (!is_new)
            known->second = std::min(known->second, direction.outcome);
    }
}

std::map<std::size_t, WorstOutcomes> worst_by_look(const CheckFindings& check)
{
    std::map<std::size_t, WorstOutcomes> worst;
    for (const RowFindings& row : check.rows) {
        for (const LampVerdict& verdict : row.lamps)
            take_worse(worst[verdict.look], verdict);
        if (row.together)
            take_worse(worst[row.together->look], *row.together);
    }
    return worst;
}

std::string cd_cell(const std::optional<Intensity>& intensity)
{
    return intensity ? csv_number(*intensity) : "";
}

/// Empty where there is no photometric file, or it does not reach there.
std::string whole_cell(const LampLook& look, std::size_t at)
{
    return look.light ? cd_cell(look.light->toward[at].whole) : "";
}

std::string left_cell(const LampLook& look, std::size_t at)
{
    return look.light ? cd_cell(look.light_left(at)) : "";
}

std::string direction_row(const std::string& check, const LampLook& look, std::size_t at,
                          Outcome outcome)
{
    const Bearing& toward = look.toward[at];
    return csv_row({check, label_of(look), csv_number(toward.h), csv_number(toward.v),
                    csv_number(look.seen[at].lens), csv_number(look.seen[at].approved),
                    csv_number(look.visible(at)), csv_number(look.low(at)),
                    csv_number(look.high(at)), csv_number(look.hidden_low(at)),
                    csv_number(look.hidden_high(at)), csv_number(uncertainty(look, at)),
                    csv_number(look.mesh_error[at]), look.seen[at].certified ? "yes" : "no",
                    std::string(key_of(outcome)), whole_cell(look, at), left_cell(look, at)});
}

} // namespace

std::string directions_csv(const Findings& findings)
{
    std::string csv = "check,lamp,h_deg,v_deg,lens_mm2,approved_mm2,visible_mm2,low_mm2,high_mm2,"
                      "hidden_low_mm2,hidden_high_mm2,expected_error_mm2,mesh_error_mm2,certified,"
                      "outcome,whole_cd,left_cd\n";
    for (const CheckFindings& check : findings.checks)
        for (const auto& [look, worst] : worst_by_look(check))
            for (const auto& [at, outcome] : worst)
                csv += direction_row(check.name, findings.looks[look], at, outcome);
    return csv;
}

} // namespace glim
