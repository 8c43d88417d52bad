#include "judgement/situations.h"

namespace glim {

Study in_position(const Study& study, const MovedTo& moved)
{
    Study there = study;
    const MovedPart& part = study.moved_parts[moved.part];
    for (const SurfaceId id : part.surfaces) {
        Surface& surface = there.surfaces[id];
        surface.mesh = placed(surface.mesh, part.positions[moved.position].move);
        if (surface.role == Role::ignored)
            surface.role = Role::opaque;
    }
    return there;
}

} // namespace glim
