#pragma once

#include "judgement/findings.h"
#include "report/report_figures.h"
#include "report/run_facts.h"

#include <string>

namespace glim {

/// What a report is made of.
struct ReportContent {
    const Findings& findings;
    const RunFacts& facts;
    const ReportFigures& figures;
    std::string date = {}; ///< "2026-01-02"; empty: the report bears none
};

} // namespace glim
