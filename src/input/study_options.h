#pragma once

#include "input/table_reader.h"
#include "model/option.h"

#include <vector>

namespace glim {

/// Reads every [[option]]: a variant to compare, and what the user knows of its cost. The
/// study that one names is not opened.
std::vector<Option> read_options(TableReader& top);

/// Reads [costs]; nothing where the study has none.
std::optional<Programme> read_costs(TableReader& top);

} // namespace glim
