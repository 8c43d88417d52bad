#pragma once

#include "input/name_book.h"
#include "input/select_facets.h"
#include "model/study.h"

#include <optional>

namespace glim {

/// One [[mesh]] of a study.
struct MeshDraft {
    MeshSource source;
    Place place;
    /// In the vehicle's frame, in mm; nothing if something about it was complained of.
    std::optional<NamedMesh> placed;
    std::vector<Warning> warnings; ///< what of the file is not in the mesh as drawn
};

/// Reads every [[mesh]] and its file. Each file is scaled by its
/// unit and turned from its own axes into the vehicle's: none of them is guessed.
std::vector<MeshDraft> read_meshes(TableReader& study, const std::optional<Vehicle>& vehicle,
                                   NameBook& names);

} // namespace glim
