#pragma once

#include "input/study_surfaces.h"

namespace glim {

inline constexpr std::string_view rest_prefix = "rest of ";

/// For each mesh the facets that no surface selects, as one opaque surface more: what is dropped
/// would turn see-through. In a half model it gets a twin. Each is told in a warning.
std::vector<Surface> rest_surfaces(const std::vector<SurfaceDraft>& surfaces,
                                   const std::vector<MeshDraft>& meshes, const Vehicle& vehicle,
                                   std::vector<Warning>& warnings);

} // namespace glim
