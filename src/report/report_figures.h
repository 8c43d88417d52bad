#pragma once

#include "drawing/charted_lamps.h"
#include "drawing/pictures.h"
#include "judgement/session.h"

#include <vector>

namespace glim {

/// The charts of one lamp under one row.
struct LampCharts {
    ChartedLamp place;
    std::vector<Figure> figures;
};

/// All that a report shows.
struct ReportFigures {
    std::vector<LampCharts> charts;
    Pictures pictures;
};

/// Figures of what was found in the session as it is: charts of every charted lamp, with who is in
/// the way asked anew for them, and pictures. `mapping` tells progress by directions, `picturing`
/// by pictures. Throws Stopped.
ReportFigures report_figures(const Session& session, const Findings& findings,
                             const Workers& mapping, const Workers& picturing);

} // namespace glim
