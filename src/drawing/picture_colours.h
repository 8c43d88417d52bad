#pragma once

#include "drawing/colour.h"
#include "model/surface.h"

namespace glim {

// The colours of pictures. Bodies are quiet, so that lit areas stand out; neighbours in a study
// differ in lightness too, so that they are told apart in grey and by those who confuse hues.

/// The same for a surface in all pictures of a study.
Colour quiet_colour(SurfaceId surface);

inline constexpr Colour lit_colour{255, 176, 0};         ///< a lit face that is seen
inline constexpr Colour hidden_colour{196, 110, 20};     ///< mixed into what hides it
inline constexpr Colour own_hidden_colour{70, 110, 160}; ///< where the lamp hides itself
inline constexpr Colour rim_colour{30, 30, 34};
inline constexpr Colour nothing_there{250, 250, 250}; ///< where the eye meets no body

} // namespace glim
