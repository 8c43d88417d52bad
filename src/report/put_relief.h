#pragma once

#include "machine/new_folder.h"
#include "remedy/relief.h"

#include <filesystem>

namespace glim {

/// Puts into `folder`, which will stand at `target`, what a surface modeller and `check` need of a
/// relief of the study: `study.toml`, laid over it; and for each reshaped surface the mesh (OBJ,
/// and PLY with the depth at its points), the body to be cut away (STL), a map of the depths (SVG,
/// PNG), and sections through the deepest point (SVG; CSV with points and depths). Nothing where no
/// surface was changed.
void put_relief(const Relief& relief, const Study& study, const std::filesystem::path& target,
                NewFolder& folder);

} // namespace glim
