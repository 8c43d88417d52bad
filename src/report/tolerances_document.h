#pragma once

#include "judgement/tolerance_findings.h"
#include "model/study.h"
#include "report/document.h"

namespace glim {

/// A page on builds within tolerances. `names` are what the user named, as RunFacts has them;
/// `command` is what gives it again.
Document tolerances_document(const ToleranceFindings& found, const Study& study,
                             const std::vector<std::string>& names, const std::string& command);

} // namespace glim
