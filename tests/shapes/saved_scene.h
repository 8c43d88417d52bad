#pragma once

#include "shapes/random_scene.h"

#include <filesystem>
#include <string>

namespace glim::shapes {

/// Writes `scene.obj`, `study.toml` and `asked.toml`, a table with the scene's directions as points
/// and `least` as the area asked for, into `folder`, which is made. `cornerglim check` reads the
/// study; every coordinate comes back to the last bit, points in one place as one point.
void save_as_study(const RandomScene& scene, const std::filesystem::path& folder,
                   const std::string& title, Area least);

} // namespace glim::shapes
