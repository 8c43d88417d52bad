#pragma once

#include "input/toml_table.h"
#include "model/source_file.h"

#include <filesystem>

namespace glim {

/// A study as it is written, and the files that it is written in.
struct StudyText {
    TomlTable table;
    std::vector<SourceFile> files; ///< the study's own first; named as they were opened
};

/// The TOML of a study. Where it names a `base`, that file is read first, with its own base if it
/// has one, and this one is laid over it; every value keeps the place where it is written.
///
/// Tables of the top take their keys from both, and this file's replace the base's, whole. Lists of
/// tables with a `name` take their entries from both: an entry of a name that the base has changes
/// that one, key by key, or takes it away if it says `remove = true`; others are added at the end.
/// Throws InputError if a file cannot be read, if the bases run in a circle, and for every entry
/// that removes what is not there.
StudyText read_study_text(const std::filesystem::path& file);

} // namespace glim
