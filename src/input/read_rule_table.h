#pragma once

#include "model/complaint.h"
#include "model/rule.h"

#include <filesystem>
#include <string>
#include <string_view>

namespace glim {

/// Reads a requirement table; docs/requirement-tables.md has its keys. The table is called as its
/// file, without the ending. Throws InputError with everything that is wrong.
RuleTable read_rule_table(const std::filesystem::path& file);

/// The same from the text itself; `file` is what complaints call it, `name` what studies do.
RuleTable parse_rule_table(std::string_view text, const std::string& file, const std::string& name);

} // namespace glim
