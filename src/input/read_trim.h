#pragma once

#include "geometry/trim.h"
#include "input/table_reader.h"
#include "model/source_file.h"

namespace glim {

/// How a lamp is trimmed, and the file of its curve if it has one, named as it was opened.
struct TrimDraft {
    Trim trim;
    std::optional<SourceFile> curve_file = {};
};

/// Reads the key `trim` of a lamp, and the file of its curve. Nothing if it is missing or was
/// complained of.
std::optional<TrimDraft> read_trim(TableReader& lamp);

} // namespace glim
