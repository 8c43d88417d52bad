#pragma once

#include "drawing/figure.h"
#include "remedy/added_lamp.h"

namespace glim {

/// The corner with every facet that may carry a lamp painted by the lens that it would need there
/// to answer every row alone, and the places that were worked out, numbered. 400 by 250 points.
/// Throws Stopped.
Figure suitability_view(const AddedLampAnswer& answer, const Session& session,
                        const Workers& workers);

} // namespace glim
