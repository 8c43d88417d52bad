#include "report/facets_csv.h"

#include "report/csv.h"
#include "words/keys.h"
#include "words/look_words.h"
#include "words/numbers.h"

namespace glim {

namespace {

std::vector<std::string> figures(const FacetShare& share)
{
    std::vector<std::string> cells = {csv_number(share.at_worst.taken),
                                      csv_number(share.at_worst.first)};
    cells.push_back(share.mean ? csv_number(share.mean->taken) : "");
    cells.push_back(share.mean ? csv_number(share.mean->first) : "");
    for (const double coordinate : share.centre)
        cells.push_back(csv_number(millimetres(coordinate)));
    return cells;
}

std::string verdict_rows(const CheckFindings& check, const RowFindings& row,
                         const LampVerdict& verdict, const LampLook& look)
{
    std::string csv;
    for (const Blocker& blocker : verdict.blockers)
        for (std::size_t i = 0; i < blocker.facets.size(); ++i) {
            const FacetShare& share = blocker.facets[i];
            std::vector<std::string> cells = {check.name,
                                              row.row.id,
                                              label_of(look),
                                              std::string(key_of(look.side)),
                                              blocker.surface,
                                              blocker.twin ? "yes" : "no",
                                              std::to_string(share.facet),
                                              std::to_string(i + 1)};
            const std::vector<std::string> more = figures(share);
            cells.insert(cells.end(), more.begin(), more.end());
            csv += csv_row(cells);
        }
    return csv;
}

} // namespace

std::string facets_csv(const Findings& findings)
{
    std::string csv = "check,row,lamp,side,surface,twin,facet,rank,taken_at_worst_mm2,"
                      "first_at_worst_mm2,mean_taken_mm2,mean_first_mm2,centre_x_mm,centre_y_mm,"
                      "centre_z_mm\n";
    for (const CheckFindings& check : findings.checks)
        for (const RowFindings& row : check.rows) {
            for (const LampVerdict& verdict : row.lamps)
                csv += verdict_rows(check, row, verdict, findings.looks[verdict.look]);
            if (row.together)
                csv += verdict_rows(check, row, *row.together, findings.looks[row.together->look]);
        }
    return csv;
}

} // namespace glim
