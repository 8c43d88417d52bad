#pragma once

#include "machine/workers.h"
#include "visibility/body_picture.h"

namespace glim {

/// Whether one of the picture's lines runs through a sample.
enum class Rim : std::uint8_t {
    none,
    thin,  ///< where a part ends, or its surface jumps
    strong ///< where a part ends before what lies behind it
};

/// The lines of a picture, one rim a sample. Those of the parts marked in `strong` (one a part) are
/// strong where they stand before something else. Throws Stopped.
std::vector<Rim> rims_of(const BodyPicture& picture, const std::vector<bool>& strong,
                         const Workers& workers);

} // namespace glim
