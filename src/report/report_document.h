#pragma once

#include "report/document.h"
#include "report/report_content.h"

namespace glim {

/// The report: the answer on the first page, a chapter for every check, what it all stands on, and
/// what it does not tell. Figures are those of result.json, rounded as text is.
Document report_document(const ReportContent& content);

} // namespace glim
