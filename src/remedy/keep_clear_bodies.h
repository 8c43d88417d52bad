#pragma once

#include "remedy/keep_clear_body.h"
#include "remedy/kept_part.h"

namespace glim {

/// Where a space ends: places of the plan, and two levels. Level frame.
struct SpaceReach {
    ConvexPolygon plan; ///< counter-clockwise
    HeightSpan levels;
};

/// The space of one lamp as bodies: one, unless parts of the lamp stand above each other with
/// nothing between. Then the gap between their spaces would be lost in one body, and each part has
/// its own; they may run into each other.
struct KeepClearBodies {
    TriangleMesh mesh; ///< level frame
    std::size_t count = 0;
    Volume volume;
    std::optional<Length> within;
};
KeepClearBodies keep_clear_bodies(const TriangleMesh& lit, const KeptParts& kept,
                                  const SpaceReach& reach, Length chord_error,
                                  const Workers& workers);

/// About how large the space is: heights over a grid of places, added up. Throws
/// Stopped.
Volume about_volume(const KeepClearSet& set, const SpaceReach& reach, const std::stop_token& stop);

} // namespace glim
