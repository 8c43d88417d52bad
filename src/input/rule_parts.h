#pragma once

#include "input/table_reader.h"
#include "model/rule.h"

namespace glim {

/// Ids of a table's rows and rules, each used once among both, and where each stands.
using RuleIds = std::vector<Reference>;

/// Reads the key `id`; one used before is a complaint. It joins `ids` in any case.
std::string read_id(TableReader& table, RuleIds& ids);

/// A rule as it is read, and where its parts are named.
struct RuleDraft {
    Rule rule;
    Place place;
    std::vector<Reference> parts;
};

/// Reads one [[rule]]; its parts may name what comes later in the file.
RuleDraft read_rule(TableReader& table, RuleIds& ids);

/// Complains of parts that are no row or rule, and of rules that stand on themselves.
void check_parts(const std::vector<RuleDraft>& rules, const RuleIds& ids, Complaints& complaints);

} // namespace glim
