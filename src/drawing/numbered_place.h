#pragma once

#include "drawing/canvas.h"

namespace glim {

/// A ring with a number in it, on a picture's place.
void draw_numbered_place(Canvas& canvas, const Point2& at, const std::string& number);

} // namespace glim
