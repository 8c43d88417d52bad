#pragma once

#include "judgement/findings.h"

#include <string>

namespace glim {

/// `facets.csv`: a row for every facet in the way, of every check, row and lamp, surfaces and their
/// facets as ranked in the findings. `facet` counts from 0 through the surface's facets, in the
/// order in which the mesh file has them once its polygons are cut into triangles. The centre is
/// where the facet stands: of a twin on the far side. Means are empty where no direction fails.
std::string facets_csv(const Findings& findings);

} // namespace glim
