#include "report/charts.h"

#include "report/area_maps.h"
#include "report/look_words.h"
#include "report/map_frame.h"

namespace glim {

std::vector<Figure> charts_of(const Findings& findings, const CheckFindings& check,
                              const RowFindings& row, const LampVerdict& verdict,
                              const BlockingMap&)
{
    std::vector<Figure> charts;
    if (!has_areas(verdict))
        return charts;
    const auto subject = chart_subject(check, row, verdict, findings.looks[verdict.look],
                                       findings.sampling.hairline);
    if (subject->figures.grid.has_cells()) {
        charts.push_back(area_map(subject));
        if (!std::holds_alternative<NoObstacle>(row.row.criterion))
            charts.push_back(margin_map(subject));
        if (is_wide(verdict.field))
            charts.push_back(polar_area_map(subject));
    }
    return charts;
}

} // namespace glim
