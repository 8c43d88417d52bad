#pragma once

#include "model/rule.h"
#include "report/json.h"

namespace glim {

/// A list of rectangles {h_least_deg, h_most_deg, v_least_deg, v_most_deg}.
Json field_json(const Field& field);

/// A list of function keys; empty: every function.
Json functions_json(const std::vector<LampFunction>& functions);

/// The members provenance, source, clause.
Json::Object citation_json(const Citation& citation);

/// A row with all its figures, its citation beside them.
Json::Object row_json(const RuleRow& row);

/// A whole table: rows and rules.
Json table_json(const RuleTable& table);

} // namespace glim
