#pragma once

#include "drawing/colour.h"
#include "report/document.h"

#include <string>

namespace glim {

// The colours of a report's text and of what lies below it, for page and PDF alike. A test holds
// every pair to a contrast of 4.5 : 1 at least (WCAG 2.1, success criterion 1.4.3).

inline constexpr Colour ink{27, 31, 36};
inline constexpr Colour quiet_ink{84, 92, 102}; ///< captions, labels, page numbers
inline constexpr Colour heading_ink{20, 48, 74};
inline constexpr Colour met_ink{0, 82, 136};
inline constexpr Colour not_met_ink{158, 52, 0};
inline constexpr Colour open_ink{104, 74, 0};

inline constexpr Colour head_paper{233, 238, 243};   ///< of a table's head
inline constexpr Colour notice_paper{255, 244, 222}; ///< of what stands out in a frame

inline constexpr Colour rule_line{190, 197, 205};
inline constexpr Colour notice_line{190, 130, 20};

Colour ink_of(Tone tone);

/// "#0a1b2c"
std::string hex_of(Colour colour);

} // namespace glim
