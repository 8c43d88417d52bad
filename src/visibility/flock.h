#pragma once

#include "visibility/ray_caster.h"
#include "visibility/sectors.h"

namespace glim {

/// Bodies that move as one while others stay behind, as drawn; scene frame.
struct Flock {
    std::vector<Box> boxes; ///< one a body, which holds it at any profile it may have
    Caster caster;          ///< the bodies, in the same order
    /// So far at most they move against the lit face, as an eye in any fixed direction sees it.
    Length reach;
    bool with_lit_face = false; ///< they move with it, and keep their places before it
};

/// A rigid move of something, and how much it turns.
struct Straying {
    explicit Straying(const Placement& to);

    Placement moved; ///< scene frame from where it was drawn
    /// How far apart, at most, the moves of two of its points are, mm for each mm between them.
    double turned;
};

/// A body as it stands in a build.
struct StrayedBody {
    std::shared_ptr<const PreparedPart> part;
    Placement part_from_lit; ///< from the lit face's own frame, as built
    Straying straying;
};

/// A flock as it stands in a build.
struct StrayedFlock {
    std::vector<StrayedBody> bodies; ///< in the flock's order
    Length widened;                  ///< profiles are off by so much at most
};

/// What stands before a lit face in a build.
struct StrayedBodies {
    Straying lit = Straying(Placement());
    Placement lit_from_scene = {}; ///< the lit face's own frame, which is the scene's as drawn
    std::vector<StrayedFlock> flocks;
};

/// Which bodies of a flock may come between a lit face and an eye in one direction, as long as they
/// move no further than the flock's reach: places in the flock. `around` holds the lit face and
/// what is asked beside it.
std::vector<std::uint32_t> bodies_before(const Box& around, const Flock& flock,
                                         const Direction& toward);

/// Those bodies of a flock, seen from one direction.
struct FlockBefore {
    std::vector<std::uint32_t> bodies; ///< places in the flock
    std::vector<Box> boxes;            ///< of those, as drawn
    Length reach;                      ///< the flock's
};

/// How a flock's shadow strays, as the eye sees it.
struct Drift {
    bool strays = false; ///< at all; also towards the eye or away from it, which is not in the rest
    Length reach = {};   ///< so far at most
    Sectors behind = 0;  ///< the ways from where it falls to where it fell
};

/// In the view plane of `toward`, against a lit face that this box holds as drawn.
Drift drift_toward(const ViewPlane& toward, const FlockBefore& before, const Box& lit,
                   const StrayedBodies& strayed, const StrayedFlock& flock);

/// 1 where a ray meets any of them beyond its skip; all in the lit face's frame.
std::vector<std::uint8_t> occluded_by(const FlockBefore& before, const StrayedFlock& flock,
                                      const Direction& toward, std::span<const RayStart> starts);

} // namespace glim
