#pragma once

#include "drawing/canvas.h"
#include "drawing/level_set.h"
#include "words/bearing_words.h"

namespace glim {

/// How directions lie on a drawing, and the axes around them.
struct MapFrame {
    Rect plot;  ///< where directions lie
    Rect whole; ///< with the axes' labels
    std::function<Point2(const Bearing&)> point_of;
    /// Of a point in the plot; none where no direction lies.
    std::function<std::optional<Bearing>(const Point2&)> bearing_at;
    std::function<void(Canvas&)> draw_under; ///< what lies below the map
    std::function<void(Canvas&)> draw_over;  ///< lines and labels
    std::vector<Rect> labels = {};           ///< in the plot: nothing is written over them
    bool curved = false;       ///< straight lines between bearings are none on the drawing
    bool joins_behind = false; ///< H = 180 and H = -180 are one and the same, inside the field
};

/// The rectangle around the field.
FieldRectangle around(const Field& field);

/// Longitude across, growing to the right, by latitude up: at one scale for both where that leaves
/// the smaller side wide enough to read, and so said on the axis where not. At the top left of
/// `room`, which it may use up. Requires: the field has some width and some height.
MapFrame plane_frame(const Field& field, const BearingSpeech& speech, const Rect& room);

/// The axis in the middle of rings, all directions as far from it as they are in degrees (azimuthal
/// equidistant): +H to the right, up above. As much of the rings as the field needs, and its axis.
MapFrame polar_frame(const Field& field, const BearingSpeech& speech, const Rect& room);

/// Whether a plane map of the field says too little of how large things are.
bool is_wide(const Field& field);

/// Lines of bearings on the frame; those without length are left out.
Path path_on(const MapFrame& frame, std::span<const BearingLine> lines);

/// The same without the seam behind the lamp, where one side of the field joins the other.
Path rim_on(const MapFrame& frame, std::span<const BearingLine> lines);

} // namespace glim
