#pragma once

#include "drawing/canvas.h"

namespace glim {

/// Which colour stands for which area, in an upright bar with its figures to the right.
struct ColourBar {
    std::string title; ///< what is measured, with its unit
    double least = 0, most = 0;
    std::function<Colour(double mm2)> colour;
    std::optional<double> threshold = {}; ///< marked on the bar
    /// What lies beyond has the colours of the ends: the end figures say so.
    bool open_below = false, open_above = false;
};

/// How much room bars take beside a map.
inline constexpr double colour_bar_width = 84;

void draw_colour_bar(Canvas& canvas, const ColourBar& bar, const Rect& where);

} // namespace glim
