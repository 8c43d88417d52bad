#pragma once

#include "input/study_surfaces.h"
#include "model/study.h"

namespace glim {

/// Complains of pushes that would move their surface along itself, and of surfaces whose normals do
/// not tell which way is in. Requires: facets were taken.
void check_pushes(const std::vector<SurfaceDraft>& surfaces, Complaints& complaints);

/// Reads [relief]; what is missing keeps its default. Requires: the checks were read.
ReliefWish read_relief(TableReader& top, const std::vector<Check>& checks);

} // namespace glim
