#pragma once

#include "drawing/colour.h"

#include <cstddef>
#include <vector>

namespace glim {

/// A picture in pixels, row by row from the top left.
struct Raster {
    int width = 0, height = 0;
    std::vector<Colour> pixels; ///< width x height

    Raster() = default;
    Raster(int w, int h, Colour colour = white)
        : width(w), height(h),
          pixels(static_cast<std::size_t>(w) * static_cast<std::size_t>(h), colour)
    {
    }

    Colour& at(int x, int y) { return pixels[place(x, y)]; }
    Colour at(int x, int y) const { return pixels[place(x, y)]; }

private:
    std::size_t place(int x, int y) const
    {
        return static_cast<std::size_t>(y) * static_cast<std::size_t>(width) +
               static_cast<std::size_t>(x);
    }
};

} // namespace glim
