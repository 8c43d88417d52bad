#pragma once

#include "model/mesh_file.h"

#include <string>

namespace glim {

/// A first study for a mesh: TOML text with a [[surface]] for every named part. What only a person
/// can know is left as `""` on a line that says FILL IN and what may stand there; until then,
/// reading the study complains of just those lines. `mesh_file` as the study's folder sees it.
std::string starter_study(const MeshFile& mesh, const std::string& mesh_file);

} // namespace glim
