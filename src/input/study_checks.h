#pragma once

#include "input/name_book.h"
#include "model/study.h"

#include <optional>

namespace glim {

/// Complains where there is none.
void demand_checks(TableReader& top);

/// Reads every [[check]] into the study, and the requirement tables that they name, each once;
/// those beside the study lie in its folder. A rule that depends on the overall width while the
/// vehicle, if that is known, does not give it is a complaint.
void read_checks(TableReader& top, const std::optional<Vehicle>& vehicle,
                 const NameBook& lamp_names, Study& study);

} // namespace glim
