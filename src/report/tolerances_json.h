#pragma once

#include "judgement/tolerance_findings.h"
#include "model/study.h"
#include "report/json.h"

namespace glim {

/// tolerances.json: all that builds showed. `command` is what gives it again.
Json tolerances_json(const ToleranceFindings& found, const Study& study,
                     const std::string& command);

/// contributions.csv: a row for each contributor of each verdict.
std::string contributions_csv(const ToleranceFindings& found, const Study& study);

/// builds.csv: a row for each bin of each verdict's histogram.
std::string build_bins_csv(const ToleranceFindings& found);

} // namespace glim
