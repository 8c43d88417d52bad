#pragma once

#include "drawing/figure.h"
#include "drawing/part_labels.h"
#include "drawing/raster.h"
#include "drawing/sight_line.h"
#include "visibility/picture_frame.h"

namespace glim {

/// The painted part of a vehicle view, pixels.
inline constexpr std::uint32_t vehicle_raster_width = 800;
inline constexpr std::uint32_t vehicle_raster_height = 400;
inline constexpr double vehicle_pixels_a_point = 2;
inline constexpr double vehicle_label_size = 7.5; ///< points

/// What stands on and around the painted picture; words are drawn as they are.
struct VehicleOverlay {
    std::string title;
    std::string figures;     ///< of the direction
    std::string lit_words;   ///< beside the lit face's colour
    std::string taken_words; ///< beside the ramp; empty: nothing is in the way
    std::string eye_words;   ///< where the sight line goes on
    std::string meets_words; ///< where it meets a body; empty: it does not
    std::optional<SightLine> line;
    std::vector<PartLabel> labels;
};

/// Where the sight line runs and its words stand, in pixels of the painted part.
std::vector<Rect> rooms_taken(const PictureFrame& frame, const VehicleOverlay& overlay);

Drawing vehicle_drawing(const PictureFrame& frame, Raster raster, VehicleOverlay overlay);

/// How strongly a facet is painted that takes something, by its strength in blocking_mesh.h: broad
/// patches take little for their size and must be easy to see all the same.
double painted_strength(double strength);

} // namespace glim
