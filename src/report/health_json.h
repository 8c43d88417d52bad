#pragma once

#include "geometry/mesh_health.h"
#include "report/json.h"

namespace glim {

/// The counts of a mesh, one member each.
Json health_json(const MeshHealth& health);

} // namespace glim
