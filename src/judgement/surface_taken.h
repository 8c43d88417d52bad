#pragma once

#include "visibility/blame.h"
#include "visibility/prepared_scene.h"

namespace glim {

/// What a surface takes toward one direction, of all lamps that answer together.
struct SurfaceTaken {
    struct OfFacet {
        std::uint32_t facet; ///< place in the surface's mesh
        bool first;          ///< as in BlamedFacet
        Area area;
    };

    Standing standing;
    TakenArea area;
    std::vector<OfFacet> facets; ///< a facet appears as often as corners of the lit face meet it
};

/// Adds what one lamp's `blame` says of its `obstacles`, which stand as in PreparedScene; a surface
/// that is named already is not named twice.
void add_blame(std::vector<SurfaceTaken>& taken, const std::vector<Standing>& obstacles,
               const Blame& blame);

} // namespace glim
