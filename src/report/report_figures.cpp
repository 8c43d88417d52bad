#include "report/report_figures.h"

#include "drawing/charts.h"
#include "judgement/blocking_map.h"

namespace glim {

ReportFigures report_figures(const Session& session, const Findings& findings,
                             const Workers& mapping, const Workers& picturing)
{
    ReportFigures figures;
    for (const ChartedLamp& place : charted_lamps(findings)) {
        const CheckFindings& check = findings.checks[place.check];
        const RowFindings& row = check.rows[place.row];
        const LampVerdict& verdict = verdict_at(findings, place);
        const BlockingMap map =
            blocking_map(session, findings.looks[verdict.look], verdict, mapping);
        figures.charts.push_back({place, charts_of(findings, check, row, verdict, map)});
    }
    figures.pictures = pictures_of(session, findings, picturing);
    return figures;
}

} // namespace glim
