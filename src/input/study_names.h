#pragma once

#include "input/table_reader.h"
#include "model/study.h"

#include <optional>

namespace glim {

// What a table says by the names of things that the study has read already. A name that nobody has
// is a complaint and gives nothing.

std::optional<LampId> read_lamp_named(TableReader& table, std::string_view key, const Study& study);
std::vector<LampId> read_lamps_named(TableReader& table, std::string_view key, const Study& study);
std::vector<SurfaceId> read_surfaces_named(TableReader& table, std::string_view key,
                                           const Study& study);
/// Places in Study::checks.
std::vector<std::size_t> read_checks_named(TableReader& table, std::string_view key,
                                           const Study& study);

} // namespace glim
