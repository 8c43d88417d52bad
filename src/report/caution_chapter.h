#pragma once

#include "report/document.h"
#include "report/report_content.h"

namespace glim {

/// How many rows that were asked are not verified in the published text, and what follows.
std::string provenance_caution(const Findings& findings);

/// Who decides, what is an estimate, and what was not looked at.
std::vector<Block> caution_chapter(const ReportContent& content);

} // namespace glim
