#pragma once

#include "judgement/tolerance_findings.h"
#include "machine/new_folder.h"
#include "model/study.h"

namespace glim {

/// Writes tolerances.html and tolerances.pdf, tolerances.json, contributions.csv, builds.csv and
/// tolerances.txt, and puts the folder in its place. `names` and `command` as RunFacts has them.
void write_tolerances(const ToleranceFindings& found, const Study& study,
                      const std::vector<std::string>& names, const std::string& command,
                      NewFolder& folder);

} // namespace glim
