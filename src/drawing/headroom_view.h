#pragma once

#include "drawing/figure.h"
#include "remedy/headroom.h"

namespace glim {

/// The corner with the tightest place, its surfaces painted by headroom (headroom_bands), the lamps
/// in their own colour, and numbers where the tightest surfaces on this side are tightest: lines
/// of headroom_rows() from 1 on. 400 by 250 points. Requires: `headroom` is not empty. Throws
/// Stopped.
Figure headroom_view(const std::vector<Headroom>& headroom, const KeepClear& found,
                     const Study& study, const Workers& workers);

} // namespace glim
