#pragma once

#include "judgement/findings.h"
#include "report/json.h"

namespace glim {

/// A check with all its rows, lamps and directions. What decided stands in front once more, so that
/// a reader in a hurry needs no more than the check's own members.
Json check_json(const Findings& findings, const CheckFindings& check);

} // namespace glim
