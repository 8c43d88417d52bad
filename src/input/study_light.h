#pragma once

#include "input/name_book.h"
#include "model/lamp_light.h"
#include "model/source_file.h"

#include <optional>

namespace glim {

/// What a [[lamp]] says of its light, and what was read for it.
struct LightDraft {
    std::optional<LampLight> light; ///< `lamp` is not set yet
    std::vector<SourceFile> files;  ///< named as they were opened
    std::vector<Warning> warnings;
};

/// Reads `photometry`, `mounting`, `brightness` and `transmittance` of a [[lamp]]; `lamp` is what
/// is known of it so far: what it emits from, and its axis. Nothing of how the file lies in the
/// lamp is guessed: what is missing, and a file that does not reach the lamp's own axis, is a
/// complaint.
LightDraft read_light(TableReader& table, const Lamp& lamp);

} // namespace glim
