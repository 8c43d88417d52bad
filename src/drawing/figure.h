#pragma once

#include "drawing/canvas.h"

namespace glim {

/// A chart or a picture with what is said about it.
struct Figure {
    Drawing drawing;
    std::string title;       ///< what it is, for a heading or a list: no full stop
    std::string caption;     ///< how to read it and what it shows
    std::string alt;         ///< what it tells, for those who cannot see it
    bool is_picture = false; ///< made of pixels; else of lines, and sharp at any size
};

} // namespace glim
