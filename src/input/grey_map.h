#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace glim {

/// Grey values in rows and columns.
struct GreyMap {
    std::size_t columns = 0, rows = 0; ///< both above 0
    std::vector<float> grey;           ///< row by row from the top, each from the left; 0 is black
};

/// No camera for lamps makes more columns or rows.
inline constexpr std::size_t most_pixels_across = 8192;

/// Whether the bytes begin like a PNG file.
bool looks_like_png(std::string_view bytes);

/// A grey PNG of 1 to 16 bits. The values count as they stand, from 0 to 1, straight: no gamma is
/// applied, and transparency is not looked at. Throws InputError, in which the file is called
/// `name`, for a damaged file, for colours, and for one that is too large.
GreyMap read_grey_png(std::string_view bytes, const std::string& name);

} // namespace glim
