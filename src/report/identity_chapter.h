#pragma once

#include "report/document.h"
#include "report/report_content.h"

namespace glim {

/// What the results stand on: program and command, files with their digests, meshes, requirements
/// with their provenance, certainty, assumptions and warnings.
std::vector<Block> identity_chapter(const ReportContent& content);

} // namespace glim
