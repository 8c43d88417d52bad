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

} // namespace glim::shapes
