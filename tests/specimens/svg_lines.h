#pragma once

#include "drawing/path.h"

#include <string>
#include <vector>

namespace glim::test {

/// The lines of an SVG drawing that are stroked this wide ("1.4"), as far as they are straight.
/// Requires: they stand on the drawing as they are, without a transform.
std::vector<Path::Line> lines_stroked(const std::string& svg, const std::string& width);

/// Around all of them.
Rect box_of(const std::vector<Path::Line>& lines);

} // namespace glim::test
