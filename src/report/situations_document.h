#pragma once

#include "judgement/situations.h"
#include "report/document.h"

namespace glim {

/// A page on states and moved parts: the verdicts, what is information, what asks differ, `views`
/// of the positions, the states themselves, and the caution. `names` are the user's.
Document situations_document(const SituationFindings& found, const Study& study,
                             std::vector<Figure> views, const std::vector<std::string>& names,
                             const std::string& command);

} // namespace glim
