#pragma once

#include "judgement/findings.h"
#include "report/json.h"

namespace glim {

/// A lamp with its areas toward every direction: `directions` holds one list a quantity, all of the
/// same length and order. Where an exact area is known, `visible_mm2`, `low_mm2`, `high_mm2` and
/// `expected_error_mm2` are its own, and `exact` keeps what sampling had said.
Json look_json(const LampLook& look);

} // namespace glim
