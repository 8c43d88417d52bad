#pragma once

#include "drawing/eye_view.h"
#include "drawing/picture_legend.h"
#include "drawing/raster.h"
#include "visibility/body_picture.h"

namespace glim {

/// The painted part of an eye's view, pixels; above and below it stands what is said of it.
inline constexpr std::uint32_t eye_raster_width = 800;
inline constexpr std::uint32_t eye_raster_height = 392;

/// All that an eye's view tells.
struct EyeFacts {
    const LampLook& look;
    Bearing toward;
    ViewedAreas areas;
    const BodyPicture& bodies;
    const LitPicture& lit;
    const std::vector<std::string>& names; ///< one a part of the bodies
    std::vector<std::string> hiders;       ///< the largest first
};

/// What the colours of a lit face stand for, in at most three rows of the legend's room.
std::vector<Swatch> eye_legend(const ViewedAreas& areas, const std::vector<std::string>& hiders);
/// Points, on the drawing.
extern const Rect eye_legend_room;

/// The painted picture with its title, the parts' names, a legend and a scale bar.
Figure eye_figure(const EyeFacts& facts, Raster raster);

} // namespace glim
