#pragma once

#include "judgement/situations.h"
#include "report/json.h"

#include <string>

namespace glim {

/// states.json: every situation with its outcome and what decides, the states and the moved parts.
Json situations_json(const SituationFindings& found, const Study& study,
                     const std::string& command);

/// states.csv: a row for each lamp under each row in each situation.
std::string situations_csv(const SituationFindings& found, const Study& study);

} // namespace glim
