#include "report/verdicts_csv.h"

#include "report/csv.h"
#include "words/keys.h"
#include "words/look_words.h"
#include "words/numbers.h"

namespace glim {

namespace {

using Cells = std::vector<std::string>;

void append(Cells& cells, const Cells& more)
{
    cells.insert(cells.end(), more.begin(), more.end());
}

Cells figures(const LampVerdict& verdict, const LampLook& look)
{
    if (!has_areas(verdict))
        return Cells(9);
    const std::size_t at = worst_at(verdict);
    return {csv_number(verdict.needed),        csv_number(verdict.least_visible),
            csv_number(verdict.margin),        csv_number(verdict.hidden),
            csv_number(look.toward[at].h),     csv_number(look.toward[at].v),
            csv_number(uncertainty(look, at)), csv_number(verdict.mesh_error),
            is_exact(look, at) ? "yes" : "no"};
}

Cells coverage(const LampVerdict& verdict)
{
    if (!has_areas(verdict))
        return Cells(4);
    const Coverage& c = verdict.coverage;
    Cells cells{std::to_string(c.directions_met), std::to_string(c.directions), "", ""};
    if (c.solid_angle > SolidAngle()) {
        cells[2] = csv_number(c.solid_angle_met);
        cells[3] = csv_number(c.solid_angle);
    }
    return cells;
}

/// Of the worst direction, or of the group that decides.
Cells light(const LampVerdict& verdict)
{
    Cells cells(4);
    const auto cd = [](const std::optional<Intensity>& i) { return i ? csv_number(*i) : ""; };
    if (verdict.light && verdict.light->worst_group) {
        const GroupOfLight& group = verdict.light->groups[*verdict.light->worst_group];
        cells = {csv_number(group.needed), cd(group.whole), cd(group.left), ""};
    } else if (verdict.light) {
        cells = {csv_number(verdict.light->needed), cd(verdict.light->whole),
                 cd(verdict.light->left), ""};
    }
    if (verdict.estimate)
        cells[3] = !verdict.estimate->suffices   ? "unknown"
                   : *verdict.estimate->suffices ? "would_suffice"
                                                 : "would_not_suffice";
    return cells;
}

/// "what=figure unit" for each, joined by "; ".
std::string measured_cell(const LampVerdict& verdict)
{
    std::string cell;
    for (const Measurement& m : verdict.measured)
        cell += (cell.empty() ? "" : "; ") + m.what + "=" + rounded(m.figure, 3) + " " +
                std::string(key_of(m.unit));
    return cell;
}

std::string verdict_row(const CheckFindings& check, const RowFindings& row,
                        const LampVerdict& verdict, const LampLook& look, bool decides)
{
    Cells cells{check.name,
                std::string(key_of(check.outcome)),
                std::string(key_of(check.because)),
                row.row.id,
                label_of(look),
                std::string(key_of(verdict.outcome)),
                std::string(key_of(verdict.because)),
                decides ? "yes" : "no"};
    append(cells, figures(verdict, look));
    append(cells, coverage(verdict));
    append(cells, light(verdict));
    append(cells, {measured_cell(verdict), verdict.follows, verdict.relaxation ? "yes" : "no",
                   std::string(key_of(row.row.answered_by)),
                   std::string(key_of(row.row.citation.provenance)), row.row.citation.source,
                   row.row.citation.clause});
    return csv_row(cells);
}

std::string row_rows(const Findings& findings, const CheckFindings& check, std::size_t number)
{
    const RowFindings& row = check.rows[number];
    const bool row_decides = check.deciding && check.deciding->row == number;
    std::string csv;
    for (std::size_t i = 0; i < row.lamps.size(); ++i) {
        const bool decides = row_decides && !check.deciding->together && check.deciding->lamp == i;
        csv += verdict_row(check, row, row.lamps[i], findings.looks[row.lamps[i].look], decides);
    }
    if (row.together)
        csv += verdict_row(check, row, *row.together, findings.looks[row.together->look],
                           row_decides && check.deciding->together);
    return csv;
}

} // namespace

std::string verdicts_csv(const Findings& findings)
{
    std::string csv =
        "check,check_outcome,check_because,row,lamp,outcome,because,decides,needed_mm2,least_"
        "visible_mm2,"
        "margin_mm2,hidden_mm2,worst_h_deg,worst_v_deg,expected_error_mm2,mesh_error_mm2,exact,"
        "directions_met,directions,"
        "solid_angle_met_sr,solid_angle_sr,needed_cd,whole_cd,left_cd,estimate,measured,follows,"
        "relaxed,answered_by,provenance,source,clause\n";
    for (const CheckFindings& check : findings.checks)
        for (std::size_t i = 0; i < check.rows.size(); ++i)
            csv += row_rows(findings, check, i);
    return csv;
}

} // namespace glim
