#pragma once

#include "input/table_reader.h"

#include <string_view>

namespace glim {

/// Ends the reading of a study's section: keys that nobody asked for become complaints that suggest
/// the nearest known key, or the section where this key belongs. Requires: the reader asked for
/// exactly the keys that model/study_keys.h lists for the section.
void finish_section(TableReader& table, std::string_view section);

} // namespace glim
