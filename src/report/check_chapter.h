#pragma once

#include "report/document.h"
#include "report/report_content.h"

namespace glim {

/// One check, a place in the findings: its answer, all rows of its rule, and the lamps of the row
/// that is charted.
std::vector<Block> check_chapter(const ReportContent& content, std::size_t check);

} // namespace glim
