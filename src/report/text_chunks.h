#pragma once

#include "drawing/canvas.h"

#include <vector>

namespace glim {

/// The text in parts, none of them higher than `height` once set: broken at blanks where there are
/// any, never within a character. Mostly that is the text itself. Requires: room for one line.
std::vector<Text> text_chunks(const Text& text, double height);

} // namespace glim
