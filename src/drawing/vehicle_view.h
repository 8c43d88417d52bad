#pragma once

#include "drawing/figure.h"
#include "judgement/session.h"

namespace glim {

/// The whole corner around a verdict's lamp: facets in the way painted by the area they take, the
/// sight line from the worst direction from the lamp to where it meets a body, and on to the eye.
/// Covers that light passes and ignored surfaces are not drawn. 400 by 250 points. Requires: the
/// verdict has areas. Throws Stopped.
Figure vehicle_view(const Session& session, const LampLook& look, const LampVerdict& verdict,
                    const Workers& workers);

} // namespace glim
