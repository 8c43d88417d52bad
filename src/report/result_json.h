#pragma once

#include "judgement/findings.h"
#include "report/json.h"
#include "report/run_facts.h"

namespace glim {

/// The layout of result.json; docs/result.schema.json says the same to machines. It grows when a
/// member changes its meaning or goes.
inline constexpr int result_schema_version = 1;

/// `result.json`: the findings, complete.
Json result_json(const Findings& findings, const RunFacts& facts);

} // namespace glim
