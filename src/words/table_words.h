#pragma once

#include "model/rule.h"
#include "words/text_block.h"

#include <string>
#include <vector>

namespace glim {

/// The tables there are, a few lines each.
std::string tables_words(const std::vector<RuleTable>& tables, const TextStyle& style = {});

/// One table in full: every rule, and every row with its figures and where they come from; then the
/// caution.
std::string table_words(const RuleTable& table, const TextStyle& style = {});

} // namespace glim
