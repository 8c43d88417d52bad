#pragma once

#include "input/read_rule_table.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace glim {

/// A file of requirement-tables/ as it was when the program was built.
struct ShippedTable {
    std::string_view name; ///< of the file, without the ending
    std::string_view text;
};

/// In the order of their names. The build writes the source of this function: embed_tables.cmake.
std::span<const ShippedTable> shipped_tables();

std::vector<std::string> shipped_table_names();

/// The table that a study in `folder` calls `name`: `name`.toml beside the study, else the one that
/// comes with the program. A name with the ending .toml is a path from that folder.
/// Throws InputError if there is none, at the place `asked_at` if given, or if it is wrong.
RuleTable find_rule_table(const std::string& name, const std::filesystem::path& folder,
                          const Place& asked_at = {});

} // namespace glim
