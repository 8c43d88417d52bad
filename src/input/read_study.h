#pragma once

#include "model/study.h"

#include <filesystem>

namespace glim {

/// What becomes of a study that asks nothing.
enum class WithoutChecks { refused, read };

/// Reads a study with its meshes and requirement tables: everything in the vehicle's frame, in mm
/// and degrees, names resolved. docs/study-file.md has the keys. What is doubtful but possible is a
/// warning in the study. Throws InputError with everything that is wrong, in the order of the file.
Study read_study(const std::filesystem::path& file,
                 WithoutChecks without_checks = WithoutChecks::refused);

} // namespace glim
