#pragma once

#include "judgement/surface_margins.h"
#include "report/json.h"

namespace glim {

/// The answer as data.
Json margins_json(const MarginFindings& found, const Study& study);

/// A row for each check, surface and way.
std::string margins_csv(const MarginFindings& found, const Study& study);

} // namespace glim
