#pragma once

#include "drawing/legend.h"
#include "drawing/map_frame.h"
#include "judgement/outcome.h"

namespace glim {

// The layers that maps are made of, from the lowest to the uppermost.

/// The colour of a direction; none outside the field.
using Painter = std::function<std::optional<Colour>(const Bearing&)>;

/// Directions in their colours, two pixels a point, cut off sharply at the field's outline.
void paint_directions(Canvas& canvas, const MapFrame& frame, const Path& outline,
                      const Painter& painter);

/// How lines across an outcome run; another way for each.
struct HatchLook {
    Angle slant;
    double spacing = 0;
};
HatchLook hatch_look(Outcome outcome);

/// Lines across what is not met, light on dark so that they show on any colour; for each outcome
/// another slant.
void hatch_outcome(Canvas& canvas, const Path& region, Outcome outcome);

/// The line at which an area reaches what is asked.
void draw_threshold(Canvas& canvas, const Path& line);

/// Around the field.
void draw_outline(Canvas& canvas, const Path& outline);

/// The worst direction.
void draw_worst(Canvas& canvas, const Point2& at);
inline constexpr double worst_radius = 4;

/// A direction that was found between the others.
void draw_found_between(Canvas& canvas, const Point2& at);

} // namespace glim
