#pragma once

#include "input/shipped_tables.h"

namespace glim::shapes {

/// The tables that come with the program, read.
inline std::vector<RuleTable> shipped_rules()
{
    std::vector<RuleTable> tables;
    for (const ShippedTable& table : shipped_tables())
        tables.push_back(parse_rule_table(table.text, std::string(table.name) + ".toml",
                                          std::string(table.name)));
    return tables;
}

} // namespace glim::shapes
