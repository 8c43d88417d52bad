#pragma once

#include <cstddef>

namespace glim {

/// A face with more corners than this is refused: cutting it would take the square of their number.
inline constexpr std::size_t most_corners_of_a_face = 4096;

} // namespace glim
