#pragma once

#include "judgement/session.h"
#include "remedy/clear_space.h"

namespace glim {

/// A surface of the study that reaches into a keep-clear space.
struct Intrusion {
    Standing surface;
    /// How far, against its normal, until it is out: the most of all places looked at.
    Length depth;
    Point deepest = Point::Zero(); ///< where that is, vehicle frame
    Box box;                       ///< around all places that are inside, vehicle frame
    /// Of the field, by solid angle (by directions where it has none): where the surface hides any
    /// of the lamp. Sampled.
    double share_of_field = 0;
    /// The surface, divided where it matters, with the depth at each point; vehicle frame, mm.
    TriangleMesh mesh;
    std::vector<Length> depths;
};

/// Places of a body are looked at so close to each other where it is near the space.
inline constexpr Length intrusion_grain = millimetres(4);

/// How far a surface reaches into a space. Nothing nearer to the lamp's face than `skipped` of the
/// space counts. None where it does not. `share_of_field` is left open.
struct SurfaceAsked {
    Standing surface;
    const TriangleMesh& mesh; ///< vehicle frame, where it stands, wound outward
};
std::optional<Intrusion> intrusion_of(const SurfaceAsked& asked, const ClearSpace& space);

} // namespace glim
