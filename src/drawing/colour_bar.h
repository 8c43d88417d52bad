#pragma once

#include "drawing/canvas.h"
#include "drawing/chart_scale.h"

namespace glim {

/// Which colour stands for which figure, in an upright bar with its figures to the right.
struct ColourBar {
    std::string title; ///< what is measured, with its unit
    ChartScale scale;
    std::function<Colour(double figure)> colour;
    std::optional<double> threshold = {}; ///< marked on the bar
    /// What lies beyond has the colours of the ends: the end figures say so.
    bool open_below = false, open_above = false;
};

/// How much room bars take beside a map.
inline constexpr double colour_bar_width = 84;

void draw_colour_bar(Canvas& canvas, const ColourBar& bar, const Rect& where);

} // namespace glim
