#pragma once

#include "input/read_reshaped.h"
#include "input/study_meshes.h"

namespace glim {

/// What is done about facets that face the wrong way.
enum class Orient {
    unsaid, ///< nothing, and a lit surface that seems to look inward is a complaint
    as_is,  ///< nothing: the user says that it is right
    flip,   ///< every facet is turned over
    outward ///< every facet is turned over if most look against the lamp's axis
};

/// One [[surface]] of a study.
struct SurfaceDraft {
    Surface surface;
    Place place;
    bool role_known = true;            ///< false after a complaint about the role
    std::optional<std::uint32_t> mesh; ///< place among the meshes
    Selection selection;
    Orient orient = Orient::unsaid;
    Place orient_place; ///< where a word about `orient` stands or would stand
    Place push_place;   ///< likewise about `push`
    std::vector<Reference> clear_for;
    std::optional<Reference> moves_with;
    std::optional<Length> chord;                ///< else the mesh's, else estimated
    std::vector<std::uint32_t> facets;          ///< of that mesh; empty after a complaint
    std::optional<ReshapedDraft> reshaped = {}; ///< stands in the place of those facets
};

/// Reads every [[surface]]. A half model has to say of each whether it has a twin.
std::vector<SurfaceDraft> read_surfaces(TableReader& study, const std::optional<Vehicle>& vehicle,
                                        const NameBook& mesh_names, NameBook& names);

} // namespace glim
