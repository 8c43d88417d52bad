#pragma once

#include "drawing/figure.h"
#include "remedy/sight_lines.h"

namespace glim {

/// How large a view is drawn, in points.
struct SightViewSize {
    double width = 480, most_height = 300;
};

/// One view of what a rule leaves open: the space that has to stay empty, row by row, with the
/// lens, the median plane, the sides of the vehicle and the ground. Coordinates of the sketch, mm.
Figure sight_view(const SightLines& lines, const LampSketch& sketch, SightView view,
                  const SightViewSize& size = {});

} // namespace glim
