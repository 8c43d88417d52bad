#pragma once

#include "input/toml_table.h"

#include <filesystem>

namespace glim {

/// The TOML of a study. Where it names a `base`, that file is read first, with its own base if it
/// has one, and this one is laid over it; every value keeps the place where it is written.
///
/// Tables of the top take their keys from both, and this file's replace the base's, whole. Lists of
/// tables with a `name` take their entries from both: an entry of a name that the base has changes
/// that one, key by key, or takes it away if it says `remove = true`; others are added at the end.
/// Throws InputError if a file cannot be read, if the bases run in a circle, and for every entry
/// that removes what is not there.
TomlTable read_study_table(const std::filesystem::path& file);

} // namespace glim
