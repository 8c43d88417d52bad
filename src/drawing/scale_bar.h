#pragma once

#include "drawing/canvas.h"

namespace glim {

/// The longest of 1, 2, 5, 10, 20 ... mm (or a tenth of those, and so on) that is at most
/// `longest`. Requires: longest > 0.
Length round_length(Length longest);

/// A bar of a round length with its words, at most `room` wide and ending at the right end of it.
/// `point` is what a point of the drawing stands for.
void draw_scale_bar(Canvas& canvas, const Rect& room, Length point);

} // namespace glim
