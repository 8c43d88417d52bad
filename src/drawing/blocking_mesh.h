#pragma once

#include "judgement/findings.h"

#include <span>

namespace glim {

/// A surface in the way, cut down to the surroundings of its patch, coloured by what facets take.
struct BlockingSurface {
    std::string name; ///< the study's
    bool twin = false;
    TriangleMesh mesh;                 ///< vehicle frame, where it stands
    std::vector<std::uint32_t> facets; ///< their places in the study's surface, one a facet
    std::vector<Area> taken;           ///< one a facet: on the mean, else at worst; mostly none
    /// One a facet: 0 where it takes nothing, else by what it takes for its size, up to 1. The
    /// facets that take most for their size, together a tenth of all, are at 1: so a sliver that
    /// catches one ray does not leave the rest pale, and the colour does not depend on how a
    /// surface is cut into facets. One scale for all surfaces of a verdict.
    std::vector<double> strength;
};

/// So much of a surface is kept around its patch: enough to find the place again.
inline constexpr Length kept_around = millimetres(150);

/// The surfaces in the way of a verdict, as ranked there. `study` as it was checked; throws
/// std::logic_error for a surface that it does not have.
std::vector<BlockingSurface> blocking_surfaces(const LampVerdict& verdict, const Study& study);

} // namespace glim
