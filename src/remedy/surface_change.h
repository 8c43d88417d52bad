#pragma once

#include "machine/workers.h"
#include "model/study.h"

namespace glim {

/// Nearer than this to the surface of before, a surface counts as unchanged: meshes of one surface
/// that were cut into facets differently lie that near to each other.
inline constexpr Length same_shape = millimetres(0.05);

/// How one surface differs between two studies, on the side that is drawn.
struct SurfaceChange {
    std::string surface;
    Length deepest = {};         ///< the farthest that a corner of either mesh lies from the other
    Point where = Point::Zero(); ///< of that corner; vehicle frame
    Area area = {};              ///< of the new surface, where it lies elsewhere than before
    /// Between the two, mm3: over the new facets, area times the distance of their centroids. An
    /// estimate; it counts what was added like what was taken away.
    double volume = 0;
};

/// Surfaces of the same name whose meshes differ, in the order of `after`. Throws Stopped.
std::vector<SurfaceChange> surface_changes(const Study& before, const Study& after,
                                           const Workers& workers = {});

/// Names of what `after` has and `before` has not, in its order; lit parts are no surfaces of their
/// own.
std::vector<std::string> surfaces_added(const Study& before, const Study& after);
std::vector<std::string> lamps_added(const Study& before, const Study& after);

} // namespace glim
