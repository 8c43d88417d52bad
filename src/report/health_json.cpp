#include "report/health_json.h"

namespace glim {

Json health_json(const MeshHealth& health)
{
    return Json::Object{{"facets", health.facets},
                        {"points", health.points},
                        {"degenerate", health.degenerate},
                        {"duplicate", health.duplicate},
                        {"boundary_edges", health.boundary_edges},
                        {"non_manifold_edges", health.non_manifold_edges},
                        {"winding_conflicts", health.winding_conflicts},
                        {"components", health.components}};
}

} // namespace glim
