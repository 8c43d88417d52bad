#pragma once

#include "judgement/findings.h"
#include "report/json.h"

namespace glim {

/// A surface in the way, its patch, and its facets as lists of one length.
Json blocker_json(const Blocker& blocker);

} // namespace glim
