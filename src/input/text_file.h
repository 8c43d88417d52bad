#pragma once

#include "model/complaint.h"

#include <filesystem>
#include <string>

namespace glim {

/// The whole of a study or requirement table. Throws InputError, with the place `asked_at` or else
/// the file's own name, if `file` does not lead to a readable text of a sensible size.
std::string read_text_file(const std::filesystem::path& file, const Place& asked_at = {});

/// The name of a file in the same folder that was probably meant: "did you mean `body.obj`?", else
/// what to do without it.
std::string remedy_for_missing(const std::filesystem::path& file);

} // namespace glim
