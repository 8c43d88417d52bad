#pragma once

#include "model/rule.h"
#include "report/document.h"
#include "report/json.h"

#include <string>
#include <vector>

namespace glim {

// Where the figures of rules come from, for pages that tell of checks without all their rows.

/// How many of the rows were not read in the published text, and what follows; the page shows
/// rule_sources() of the same rows further on.
std::string provenance_note(const std::vector<const RuleRow*>& rows);

/// Each row with its title and where its figures come from.
Terms rule_sources(const std::vector<const RuleRow*>& rows);

/// A list of {row, title, provenance, source, clause}.
Json rule_sources_json(const std::vector<const RuleRow*>& rows);

} // namespace glim
