#pragma once

#include "geometry/bearing.h"
#include "visibility/ray_caster.h"

#include <vector>

namespace glim {

/// A piece of what a picture is about.
struct SubjectPatch {
    Point centre; ///< vehicle frame
    Vector normal;
    Area size;
};

/// Of some eyes around a corner, level with it and above it, the one that sees most of the subject;
/// one before another unless that sees clearly more. `origin`: the caster's scene frame's zero.
Direction eye_on(const std::vector<SubjectPatch>& subject, const Caster& caster,
                 const Point& origin, const LampFrame& axes);

} // namespace glim
