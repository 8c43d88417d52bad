#pragma once

#include "report/document.h"
#include "report/report_content.h"

namespace glim {

/// The first page: what was asked, the answer to every check, the worst margin and where it is.
std::vector<Block> answer_chapter(const ReportContent& content);

} // namespace glim
