#pragma once

#include "report/eye_view.h"
#include "report/raster.h"
#include "visibility/body_picture.h"

namespace glim {

/// The painted part of an eye's view, pixels; above and below it stands what is said of it.
inline constexpr std::uint32_t eye_raster_width = 800;
inline constexpr std::uint32_t eye_raster_height = 400;

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

/// The painted picture with its title, the parts' names, a legend and a scale bar.
Figure eye_figure(const EyeFacts& facts, Raster raster);

} // namespace glim
