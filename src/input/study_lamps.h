#pragma once

#include "input/study_light.h"
#include "input/study_surfaces.h"

namespace glim {

/// One [[lamp]] of a study. Surfaces are places among the study's [[surface]] tables.
struct LampDraft {
    Lamp lamp;
    Place place;
    Place side_place;
    Place trim_place;
    std::optional<SourceFile> trim_file = {}; ///< named as it was opened
    LightDraft light = {};
    bool function_known = true; ///< false after a complaint, and then nothing is built on it
    bool side_known = true;     ///< likewise
};

/// Reads every [[lamp]]. A lamp that emits from a surface of another role is a complaint.
std::vector<LampDraft> read_lamps(TableReader& study, const std::optional<Vehicle>& vehicle,
                                  const std::vector<SurfaceDraft>& surfaces,
                                  const NameBook& surface_names, NameBook& names);

} // namespace glim
