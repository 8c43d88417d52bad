#pragma once

#include "machine/new_folder.h"
#include "remedy/relief.h"

#include <filesystem>

namespace glim {

/// Writes relief.json, relief.txt and what put_relief() puts, and puts the folder in its place,
/// `target`.
void write_relief(const Relief& relief, const Study& study, const std::filesystem::path& target,
                  NewFolder& folder);

} // namespace glim
