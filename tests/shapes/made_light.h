#pragma once

#include "model/study.h"

#include <functional>

namespace glim::shapes {

/// Candela by H and V in degrees, H outboard-positive, V up-positive.
using MadeField = std::function<double(double h_deg, double v_deg)>;

/// A flat patch that is equally bright from everywhere: `axis_cd` cosV cosH.
MadeField lambert(double axis_cd);

/// Measured on a goniometer of type a, every degree to 90 all round, on a lamp on the left that
/// shines forward, where outboard is to the left of one who looks out along the axis.
LampLight made_light(const MadeField& field, LampId lamp = LampId{0});

/// The same measured only so far from the axis, up and down, left and right.
LampLight made_light_within(int most_deg, const MadeField& field, LampId lamp = LampId{0});

/// The lens, 60 x 40 mm and flat, with this light, and nothing before it. Looked at every 5
/// degrees.
Study lit_in_the_open(const MadeField& field);

/// The same with a knife edge for y > 50 mm, 40 mm ahead of it. Its visible share is
/// clamp((50 - 40 tanH + 30) / 60, 0, 1) at any V (closed form): 2/3 at H 45, all of it up
/// to 26.565 outboard.
Study lit_behind_knife_edge(const MadeField& field);

} // namespace glim::shapes
