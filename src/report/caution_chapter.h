#pragma once

#include "report/document.h"
#include "report/report_content.h"

namespace glim {

/// Who decides, what is an estimate, and what was not looked at.
std::vector<Block> caution_chapter(const ReportContent& content);

} // namespace glim
