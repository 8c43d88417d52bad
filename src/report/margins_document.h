#pragma once

#include "judgement/surface_margins.h"
#include "report/document.h"

namespace glim {

/// How far surfaces may move, as a page: sentences, then for each check a chart, a table and where
/// the figures of its rule come from. `names` and `command` as RunFacts has them.
Document margins_document(const MarginFindings& found, const Study& study,
                          const std::vector<std::string>& names, const std::string& command);

} // namespace glim
