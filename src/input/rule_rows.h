#pragma once

#include "input/table_reader.h"
#include "model/rule.h"

namespace glim {

/// Reads one [[row]] of a requirement table; its id is known and set by the caller. Whatever is
/// wrong is a complaint, and the row is then not to be used.
RuleRow read_row(TableReader& table, const std::string& id);

} // namespace glim
