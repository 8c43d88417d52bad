#pragma once

#include "drawing/picture_rims.h"
#include "drawing/raster.h"

#include <functional>

namespace glim {

/// A sample's colour; `at` is its place in the picture.
using SampleColour = std::function<Colour(std::size_t at)>;

/// `colour` in the light that falls there.
Colour in_light(Colour colour, float light);

/// Whether a line of a hatch runs through the sample: lines that rise to the right, or with
/// `falling` fall.
bool is_hatched(const PictureFrame& frame, std::size_t at, bool falling = false);

/// A pixel is the mean of its samples, rims drawn over them. Throws Stopped.
Raster painted(const PictureFrame& frame, const SampleColour& colour, const std::vector<Rim>& rims,
               const Workers& workers);

} // namespace glim
