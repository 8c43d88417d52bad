#pragma once

#include "judgement/findings.h"

namespace glim {

/// The way of the light from a lamp to an eye: from a place of the lit face that is hidden, if any
/// is, to where it meets a body. Vehicle frame.
struct SightLine {
    Direction toward;             ///< the eye
    Point from;                   ///< on the lit face
    std::optional<Point> meets;   ///< none: the way is free
    std::optional<Standing> body; ///< what it meets there
};

/// The one in the middle of what is hidden, by things not approved with the lamp if they hide any
/// of it; else, where next to nothing is hidden, in the middle of the lit face. None where no lit
/// facet faces the eye. `look` is one of the scene.
std::optional<SightLine> sight_line(const Study& study, const PreparedScene& scene,
                                    const LampLook& look, const Bearing& toward);

} // namespace glim
