#pragma once

#include "model/rule.h"

#include <functional>
#include <optional>
#include <set>

namespace glim {

/// Whether a row is satisfied as far as spaces tell; nothing of a row that asks for none.
using RowKept = std::function<std::optional<bool>(const std::string& row)>;

/// Where a rule may be met in one of several ways: for each way its rows that ask for a space.
using WaysOfRule = std::vector<std::vector<std::string>>;

/// The choices under the rule `id` between at least two ways that ask for spaces.
std::vector<WaysOfRule> ways_of_rule(const RuleTable& table, const std::string& id,
                                     const RowKept& kept);

/// The rows that hold up `id`: all of them, but where one way of several is kept, those of kept
/// ways alone. `id` is kept where all of these are.
std::set<std::string> rows_that_count(const RuleTable& table, const std::string& id,
                                      const RowKept& kept);

} // namespace glim
