#pragma once

#include "drawing/canvas.h"

namespace glim {

/// A coloured field and what it stands for.
struct Swatch {
    Colour colour;
    std::optional<Hatch> hatch = {};
    std::string words; ///< drawn as they are: names may look like units
};

/// Entries side by side, in as many rows as they need; one too long for the room ends in an
/// ellipsis. Requires: their legend_height() fits into the room.
void draw_legend(Canvas& canvas, const Rect& room, const std::vector<Swatch>& entries);

double legend_height(double width, const std::vector<Swatch>& entries);

/// A thin line just inside the painted part's rim.
void draw_border(Canvas& canvas, const Rect& painted_part);

/// A picture's first line: its title at the left, shortened if need be, and figures at the right.
void draw_title(Canvas& canvas, const Rect& room, const std::string& title,
                const std::string& figures);

} // namespace glim
