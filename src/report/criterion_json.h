#pragma once

#include "model/criterion.h"
#include "report/json.h"

namespace glim {

/// `kind` and the figures of that kind, each with its unit in its name; null where a limit is not
/// set.
Json criterion_json(const Criterion& criterion);

} // namespace glim
