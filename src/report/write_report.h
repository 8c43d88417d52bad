#pragma once

#include "machine/new_folder.h"
#include "machine/workers.h"
#include "report/report_content.h"

namespace glim {

/// Who is told how far the writing of a report is, each may be empty; and who may end it.
struct ReportProgress {
    Progress figures = {}; ///< of the page
    Progress pages = {};   ///< of the PDF
    std::stop_token stop = {};
};

/// Writes what write_results() does and `report.html` and `report.pdf` beside it, and commits: all
/// appear at once or none does. `study` is what the findings were found in. Throws Stopped between
/// figures and between pages.
void write_report(const ReportContent& content, const Study& study, NewFolder& folder,
                  const ReportProgress& progress = {});

} // namespace glim
