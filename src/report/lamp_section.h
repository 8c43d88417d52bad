#pragma once

#include "report/document.h"
#include "report/report_content.h"

namespace glim {

/// One lamp under the row of a check that is charted: figures in words, charts, what hides it, from
/// where it is not covered, where the outcome changes.
std::vector<Block> lamp_section(const ReportContent& content, const ChartedLamp& place);

} // namespace glim
