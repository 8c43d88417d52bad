#pragma once

#include "judgement/surface_margins.h"
#include "machine/new_folder.h"

namespace glim {

/// Writes margins.html and margins.pdf, margins.json, margins.csv and margins.txt, and puts the
/// folder in its place. `names` and `command` as RunFacts has them.
void write_margins(const MarginFindings& found, const Study& study,
                   const std::vector<std::string>& names, const std::string& command,
                   NewFolder& folder);

} // namespace glim
