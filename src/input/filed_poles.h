#pragma once

#include "input/photometry_file.h"

namespace glim {

/// Where the angles of a filed grid are written.
struct FiledAngles {
    const std::vector<WrittenNumber>& horizontal;
    const std::vector<WrittenNumber>& vertical;
};

/// At a pole all planes look in one direction: warns, with the figures, of planes that differ there
/// by more than a hundredth of the file's peak, for less is the grain of measuring. Nothing is
/// changed by it: intensity_at says which plane stands for the pole. `filed` is the grid as the
/// file holds it, its angles those of `angles`.
void warn_of_poles(PhotometricText& file, const IntensityGrid& filed, const FiledAngles& angles);

} // namespace glim
