#pragma once

#include "model/study.h"
#include "report/document.h"

#include <string>
#include <vector>

namespace glim {

// Where the figures of rules come from, for pages that tell of checks without all their rows.

/// The rows that these checks stand on, each once, check by check in the order of their rules.
/// Pointers into the study's tables.
std::vector<const RuleRow*> rows_asked(const Study& study, const std::vector<std::size_t>& checks);

/// How many of the rows were not read in the published text, and what follows; the page shows
/// rule_sources() of the same rows further on.
std::string provenance_note(const std::vector<const RuleRow*>& rows);

/// Each row with its title and where its figures come from.
Terms rule_sources(const std::vector<const RuleRow*>& rows);

} // namespace glim
