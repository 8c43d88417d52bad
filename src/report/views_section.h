#pragma once

#include "report/document.h"
#include "report/report_content.h"

namespace glim {

/// The corner of a check, with its worst sight line; none where it looks in no direction, or where
/// the first page shows it already.
std::vector<Block> vehicle_section(const ReportContent& content, std::size_t check);

/// What the eye sees of the lamps of a check. A picture of several checks stands in the first of
/// them, and the others say so.
std::vector<Block> views_section(const ReportContent& content, std::size_t check);

/// The picture of the first page: the corner of the worst check that has one. Null if none has.
const Figure* first_picture(const ReportContent& content);

} // namespace glim
