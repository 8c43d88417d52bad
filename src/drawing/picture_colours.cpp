#include "drawing/picture_colours.h"

#include <array>

namespace glim {

namespace {

constexpr std::array quiet = {
    Colour{188, 204, 220}, Colour{232, 216, 184}, Colour{176, 206, 182}, Colour{222, 204, 224},
    Colour{172, 208, 210}, Colour{236, 202, 192}, Colour{214, 216, 180}, Colour{214, 214, 218},
    Colour{190, 190, 220}, Colour{220, 226, 200}, Colour{200, 182, 172},
};

} // namespace

Colour quiet_colour(SurfaceId surface) { return quiet[surface.index % quiet.size()]; }

} // namespace glim
